using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Recalibrating.Observing;
using WitherAdvisor.Recalibration;
using WitherAdvisor.Recalibration.Learning;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Loft.Recalibrating.Running;

/// <summary>Makes the proposal of a recalibration from all that is kept of its site.</summary>
public sealed class ProposalMaking(
    ISiteStore sites, ICoefficientStore coefficients, LogReading gathering, IReportForm form, TimeProvider clock)
{
    /// <summary>Share of the whole that working through the weather takes, for the progress told.</summary>
    private const double WeatherShare = 0.3;

    /// <summary>Half of the machine: the other half is for whoever asks for advice meanwhile.</summary>
    private static readonly int Workers = Math.Max(Environment.ProcessorCount / 2, 1);

    public async Task<StoredCoefficientSet> Make(
        StoredRecalibration job, Action<RecalibrationProgress> told, CancellationToken cancel)
    {
        StoredSite site = await sites.FindSite(job.SiteId, cancel)
            ?? throw new InvalidOperationException("A recalibration is kept without its site.");
        told(new(0, "reading_the_log"));
        LogWithWeather log = await gathering.Of(site, cancel);
        WitherCoefficients current = await Current(job, cancel);
        // A thread of its own, so that requests never wait for one of theirs.
        return await Task.Factory.StartNew(
            () => Proposal(job, log, current, told, cancel), cancel, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    private StoredCoefficientSet Proposal(
        StoredRecalibration job, LogWithWeather log, WitherCoefficients current, Action<RecalibrationProgress> told, CancellationToken cancel)
    {
        Thread.CurrentThread.Priority = ThreadPriority.BelowNormal;
        RecalibrationSettings settings = new() { ProposedName = job.ProposalName, Workers = Workers };
        ObservedWithers gathered = log.WorkThrough(settings.Prior, share => told(new(WeatherShare * share, "working_through_the_weather")), cancel);
        Relay progress = new(step => told(step with { Share = WeatherShare + (1 - WeatherShare) * step.Share }));
        RecalibrationResult result = SiteRecalibration.Run(gathered.Withers, current, settings, progress, cancel);
        return new(
            job.SiteId, job.ProposalName, clock.NowInMilliseconds(), CoefficientOrigin.Recalibration,
            SetRecord.Write(Set(result)),
            form.Write(result.Report, gathered.LeftOut, job.ComparedWith));
    }

    private async Task<WitherCoefficients> Current(StoredRecalibration job, CancellationToken cancel) =>
        job.ComparedWith is { } name && await coefficients.Find(job.SiteId, name, cancel) is { } set
            ? SetRecord.Read(set.SetJson).Site
            : new();

    private static SiteSet Set(RecalibrationResult result) => new(
        WithinRanges(result.Proposed),
        [
            .. result.Report.Groups.Select(group => new GroupSet(
                group.Cultivar, group.Standard, WithinRanges(group.Set with { SetName = Name(result.Proposed.SetName, group) }))),
        ]);

    /// <summary>What outcomes taught of a group may lie beyond what anybody may state; a set does not.</summary>
    private static WitherCoefficients WithinRanges(WitherCoefficients set) => CoefficientCatalogue.All
        .Where(known => known.Status != CoefficientStatus.Definition)
        .Aggregate(set, (so, known) => known.With(so, Math.Clamp(known.Of(so), known.Low, known.High)));

    private static string Name(string set, GroupCalibration group) =>
        $"{set}/{group.Cultivar ?? "any cultivar"}/{(group.Standard is { } standard ? KeptWord.Of(standard) : "any standard")}";

    /// <summary>Tells at once and in order, on the thread that works.</summary>
    private sealed class Relay(Action<RecalibrationProgress> tell) : IProgress<RecalibrationProgress>
    {
        public void Report(RecalibrationProgress value) => tell(value);
    }
}
