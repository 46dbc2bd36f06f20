using WitherAdvisor.Advice;
using WitherAdvisor.Ambient;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Uncertainty;

namespace WitherAdvisor.Sensitivities;

/// <summary>What a person may get wrong, moved by as much as is easily missed (common practice, no published source).</summary>
internal sealed class InputErrors(
    AdviceRequest request, PlanProblem problem, Candidate chosen, UncertainSpreads spreads, double plannedHours)
{
    public const double WeightShare = 0.1;
    public const double ClockHours = 1;

    /// <summary>Times that move the hours by less than this, h, are not named.</summary>
    private const double Worth = 0.05;

    public IEnumerable<InputSensitivity> All() =>
    [
        GreenWeight(),
        .. new[] { PluckingTime(), LoadingTime() }.OfType<InputSensitivity>().Where(bar => bar.WidthHours is null or >= Worth),
    ];

    private InputSensitivity GreenWeight()
    {
        double weight = request.Batch.GreenWeightKg;
        double? At(double share) => Dry(problem.Spread(share), chosen);
        return InputSensitivities.Of(
            "green_weight", SensitivityReach.InputError, "kg",
            (weight * (1 - WeightShare), weight, weight * (1 + WeightShare)), plannedHours,
            At(1 - WeightShare), At(1 + WeightShare), problem.Ambient.LastHour);
    }

    /// <summary>Leaf plucked earlier or later stood in other weather and lay longer or shorter before loading.</summary>
    private InputSensitivity? PluckingTime()
    {
        Batch batch = request.Batch;
        double later = Math.Min(HoursBeforeLoading, ClockHours);
        return OfTime("plucking_time", -ClockHours, later, moved => new(batch.WithLots(lots => lots.Select(lot => lot with
        {
            PluckedFrom = lot.PluckedFrom?.AddHours(moved),
            PluckedTo = lot.PluckedTo?.AddHours(moved),
        })), 0));
    }

    /// <summary>Leaf loaded earlier or later than said, its air set by the clock of the plan.</summary>
    private InputSensitivity? LoadingTime()
    {
        double earlier = Math.Min(HoursBeforeLoading, ClockHours);
        return OfTime("loading_time", -earlier, ClockHours, moved => new(
            request.Batch.WithLots(lots => lots.Select(lot => lot with { LoadedAt = lot.LoadedAt.AddHours(moved) })), moved));
    }

    private double HoursBeforeLoading => request.Batch.EachLot.Min(lot => (lot.LoadedAt - lot.PluckedTo!.Value).TotalHours);

    private InputSensitivity? OfTime(string code, double low, double high, Func<double, MovedBatch> moved) =>
        Hours(moved(low)) is { Known: true } atLow && Hours(moved(high)) is { Known: true } atHigh
            ? InputSensitivities.Of(code, SensitivityReach.InputError, "h", (low, 0, high), plannedHours, atLow.Ready, atHigh.Ready, problem.Ambient.LastHour)
            : null;

    /// <summary>Hours from the loading that was said; not known where there is no air to dry the moved batch by.</summary>
    private (bool Known, double? Ready) Hours(MovedBatch moved)
    {
        AdviceRequest other = request with { Batch = moved.Batch };
        PlanBasis basis = PlanBasis.Of(other);
        if (basis.Ahead.Ambient is not { } night)
        {
            return (false, null);
        }

        Candidate byTheClock = chosen with { SurfaceEndHour = Math.Max(chosen.SurfaceEndHour - moved.LaterHours, 0) };
        return (true, Dry(basis.Problem(other, night), byTheClock) + moved.LaterHours);
    }

    private double? Dry(PlanProblem other, Candidate plan) =>
        new UncertainWither(new CandidateTrial(other), plan, spreads).Dry(new(), 0).ReadyHour;

    private sealed record MovedBatch(Batch Batch, double LaterHours);
}
