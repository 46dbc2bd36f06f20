using System.Text.Json;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Recalibration.Learning;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

public sealed class OrderTests
{
    private static readonly ObservedWither[] Log = InventedLog.Noted(InventedLog.Draw(7, LoftNight.Make(120, 730, 3)).Log);

    [Fact]
    public void Rows_in_another_order_give_the_same_bytes()
    {
        byte[] asWritten = Bytes(Log, 2);
        for (int shuffle = 0; shuffle < 3; shuffle++)
        {
            SplitMix64 random = InventedLog.Random(shuffle);
            ObservedWither[] shuffled = [.. Log.OrderBy(_ => random.Next())];

            Assert.NotEqual(Log.Select(one => one.Id), shuffled.Select(one => one.Id));
            Assert.Equal(asWritten, Bytes(shuffled, 2));
        }
    }

    [Fact]
    public void So_does_any_number_of_threads() => Assert.Equal(Bytes(Log, 1), Bytes(Log, 3));

    [Fact]
    public void Another_log_gives_other_bytes() => Assert.NotEqual(Bytes(Log, 2), Bytes(Log[1..], 2));

    [Fact]
    public void Two_outcomes_of_one_id_are_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => SiteRecalibration.Run([Log[0], Log[0]], new(), cancellation: TestContext.Current.CancellationToken));

    [Fact]
    public void It_can_be_cancelled()
    {
        using var cancelled = new CancellationTokenSource();
        var progress = new CancelAtFirst(cancelled);

        Assert.ThrowsAny<OperationCanceledException>(() => SiteRecalibration.Run(Log, new(), null, progress, cancelled.Token));
        Assert.InRange(progress.Last, 0, 0.5);
    }

    private static byte[] Bytes(ObservedWither[] outcomes, int workers) => JsonSerializer.SerializeToUtf8Bytes(
        SiteRecalibration.Run(outcomes, new(), new() { Workers = workers }, cancellation: TestContext.Current.CancellationToken));

    private sealed class CancelAtFirst(CancellationTokenSource source) : IProgress<RecalibrationProgress>
    {
        public double Last { get; private set; }

        public void Report(RecalibrationProgress value)
        {
            Last = value.Share;
            source.Cancel();
        }
    }
}
