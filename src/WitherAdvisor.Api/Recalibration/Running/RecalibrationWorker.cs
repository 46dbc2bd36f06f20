using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Recalibrating.Running;

namespace WitherAdvisor.Api.Recalibration.Running;

/// <summary>
/// Runs recalibrations one after the other, beside everything else. Nothing that goes wrong here ends the service: advice
/// lives on the set adopted last.
/// </summary>
internal sealed class RecalibrationWorker(
    IRecalibrationStore jobs, ProposalMaking making, RecalibrationTurns turns, TimeProvider clock,
    ILogger<RecalibrationWorker> logger) : BackgroundService
{
    /// <summary>Before the first request: what still stands as running died with the last process.</summary>
    public override async Task StartAsync(CancellationToken cancellationToken)
    {
        await jobs.InterruptRunning(clock.GetUtcNow(), cancellationToken);
        // What waited when the service ended waits still.
        turns.Wake();
        await base.StartAsync(cancellationToken);
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (true)
        {
            await turns.Wait(stoppingToken);
            try
            {
                while (await jobs.BeginNext(clock.GetUtcNow(), stoppingToken) is { } job)
                {
                    await Run(job, stoppingToken);
                }
            }
            catch (Exception failure) when (!stoppingToken.IsCancellationRequested)
            {
                logger.LogError(failure, "Could not run the recalibrations that wait");
            }
        }
    }

    private async Task Run(StoredRecalibration job, CancellationToken stopping)
    {
        using CancellationTokenSource asked = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        ReportedProgress progress = new(job.Id, jobs);
        turns.Begin(job.Id, asked);
        Task telling = progress.Keep(asked.Cancel);
        try
        {
            StoredCoefficientSet proposal = await making.Make(job, progress.Tell, asked.Token);
            await jobs.Finish(job.Id, clock.GetUtcNow(), proposal, stopping);
        }
        catch (OperationCanceledException) when (asked.IsCancellationRequested)
        {
            // Where a person cancelled it that is kept already, and this changes nothing.
            await jobs.End(job.Id, clock.GetUtcNow(), RecalibrationStatus.Interrupted, cancel: CancellationToken.None);
        }
        catch (Exception failure) when (!stopping.IsCancellationRequested)
        {
            logger.LogError(failure, "Recalibration {Recalibration} of site {Site} failed", job.Id, job.SiteId);
            await jobs.End(job.Id, clock.GetUtcNow(), RecalibrationStatus.Failed, new RecalibrationFailure.OwnFault(), CancellationToken.None);
        }
        finally
        {
            turns.End();
            progress.Close();
            await telling;
        }
    }
}
