using System.Threading.Channels;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Recalibration;

namespace WitherAdvisor.Loft.Recalibrating.Running;

/// <summary>Keeps how far a recalibration is without making it wait: of what came meanwhile, only the newest.</summary>
public sealed class ReportedProgress(string id, IRecalibrationStore jobs)
{
    private readonly Channel<RecalibrationProgress> news = Channel.CreateBounded<RecalibrationProgress>(
        new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropOldest });

    public void Tell(RecalibrationProgress progress) => news.Writer.TryWrite(progress);

    /// <summary>Nothing more comes.</summary>
    public void Close() => news.Writer.Complete();

    /// <summary>Keeps until closed; <paramref name="stop"/> is called where the recalibration was ended meanwhile.</summary>
    public async Task Keep(Action stop)
    {
        await foreach (RecalibrationProgress progress in news.Reader.ReadAllAsync())
        {
            if (!await jobs.Tell(id, progress.Share, progress.Step))
            {
                stop();
            }
        }
    }
}
