using WitherAdvisor.Advice.Planning;
using WitherAdvisor.Leaf;
using WitherAdvisor.Weather;
using WitherAdvisor.Weather.Sources;

namespace WitherAdvisor.Advice;

/// <summary>The decision: from a batch and its weather to a plan.</summary>
public static class Advisor
{
    private const double OnTimeHours = 0.25;

    /// <summary>Air is looked for this far past the latest stop, h, so that cases that lag can be followed to their end.</summary>
    private const double HoursBeyond = 6;

    /// <summary>Advice for a batch. Pure: the same request always gives the same answer.</summary>
    public static AdviceOutcome Advise(AdviceRequest request)
    {
        Batch batch = request.Batch;
        ILookup<bool, WeatherReading> isAhead = request.Forecast.ToLookup(reading => reading.Time > batch.LoadedAt);
        IReadOnlyList<WeatherReading> standIns = ForetoldWhereUnread.Of(request.Readings, request.RainTotals, [.. isAhead[false]]);
        LeafEstimate leaf = EstimateLeaf(request, standIns);
        double longest = request.Site.Style.LongestHoursSincePlucking - (batch.LoadedAt - batch.PluckedFrom).TotalHours;
        NightAhead ahead = NightAhead.Of(request.Site, batch.LoadedAt, request.Readings, [.. standIns, .. isAhead[true]], Math.Max(longest, 1) + HoursBeyond);
        IReadOnlyList<Assumption> assumptions =
        [
            .. leaf.Missing, .. StaleWeather.Of(request.Readings, standIns, batch.LoadedAt), .. ahead.Assumptions,
        ];
        if (ahead.Night is not { } night)
        {
            return Refuse(request, leaf, assumptions, 0, new(LimitKind.AmbientAir, null, null), [new(ReliefKind.ReadAmbientAir, null)]);
        }

        if (longest <= 0)
        {
            return Refuse(
                request, leaf, assumptions, 0,
                new(LimitKind.LongestTimeSincePlucking, request.Site.Style.LongestHoursSincePlucking, (batch.LoadedAt - batch.PluckedFrom).TotalHours), []);
        }

        PlanProblem problem = Problem(request, leaf, night, longest);
        PlanSearch search = PlanSearch.Run(problem);
        if (search.Best is not { } chosen)
        {
            LimitNotice binding = SincePlucking(search.Nearest!.Broken!, batch);
            return Refuse(request, leaf, assumptions, search.Trial.Simulated, binding, Reliefs.ForNoPlan(problem, binding.Limit));
        }

        return Advised(request, leaf, assumptions, ahead.Foretold, search.Trial, chosen);
    }

    private static AdviceOutcome.Advised Advised(
        AdviceRequest request, LeafEstimate leaf, IReadOnlyList<Assumption> assumptions, bool foretold, CandidateTrial trial, Candidate chosen)
    {
        PlanProblem problem = trial.Problem;
        WrittenPlan plan = PlanWriter.Write(trial, chosen);
        Ensemble ensemble = Ensemble.Run(
            trial, chosen, plan, leaf.TissueMoistureWetBasis.StandardDeviation, leaf.SurfaceWaterKgPerKg.StandardDeviation, foretold);
        (IReadOnlyList<FactorEffect> effects, int simulatedForEffects) = Effects.Of(problem, chosen, DroughtChange(leaf));
        double stop = plan.Plan.StopHour;
        IReadOnlyList<Relief> reliefs = problem.ReadyByHour is { } readyBy && stop > readyBy + OnTimeHours
            ? Reliefs.ForLate(problem, readyBy, stop)
            : [];
        IReadOnlyList<LimitNotice> notices = [.. Notices.Of(problem, chosen, plan).Select(notice => SincePlucking(notice, request.Batch))];
        return new(
            plan.Plan, plan.Curve, ensemble.ReadyHours(), ensemble.FinalMoistureWetBasis(), effects,
            Checks.For(problem, chosen, plan, ensemble), notices, reliefs, leaf, assumptions,
            request.Coefficients.SetName, trial.Simulated + simulatedForEffects + Ensemble.Members);
    }

    private static LeafEstimate EstimateLeaf(AdviceRequest request, IReadOnlyList<WeatherReading> standIns)
    {
        Batch batch = request.Batch;
        return LeafPartlyForetold.Estimate(
            request.Site, request.Readings, standIns, request.RainTotals,
            new(batch.PluckedFrom, batch.PluckedTo, batch.LoadedAt, batch.Label.Standard,
                batch.MeasuredSurfaceWaterKgPerKg, batch.SurfaceFeel, batch.MeasuredMoistureWetBasis),
            request.Coefficients);
    }

    private static PlanProblem Problem(AdviceRequest request, LeafEstimate leaf, Night night, double longestHours)
    {
        Batch batch = request.Batch;
        var style = request.Site.Style;
        double shortest = leaf.Spell.Kind == SpellKind.DryWindy
            ? style.ShortestHoursSincePluckingInDryWindySpell
            : style.ShortestHoursSincePlucking;
        return new(
            new(leaf.TissueMoistureWetBasis.Value, leaf.SurfaceWaterKgPerKg.Value),
            batch.GreenWeightKg / request.Trough.AreaM2,
            request.Trough.AsItBlows(request.Coefficients),
            style,
            request.Site.HotAirC,
            night,
            request.Coefficients,
            shortest - (batch.LoadedAt - batch.PluckedTo).TotalHours,
            longestHours,
            (batch.ReadyBy - batch.LoadedAt)?.TotalHours);
    }

    /// <summary>The search counts hours from loading; the limits of the chemical wither count from plucking.</summary>
    private static LimitNotice SincePlucking(LimitNotice notice, Batch batch)
    {
        double before = notice.Limit switch
        {
            LimitKind.ShortestTimeSincePlucking => (batch.LoadedAt - batch.PluckedTo).TotalHours,
            LimitKind.LongestTimeSincePlucking => (batch.LoadedAt - batch.PluckedFrom).TotalHours,
            _ => 0,
        };
        return notice with { Allowed = notice.Allowed + before, Reached = notice.Reached + before };
    }

    private static double DroughtChange(LeafEstimate leaf) =>
        leaf.TissueMoistureWetBasis.Contributions.Where(piece => piece.Code == "drought").Sum(piece => piece.Amount);

    private static AdviceOutcome.CannotAdvise Refuse(
        AdviceRequest request, LeafEstimate leaf, IReadOnlyList<Assumption> assumptions, int simulated,
        LimitNotice binding, IReadOnlyList<Relief> reliefs) =>
        new([binding], reliefs, leaf, assumptions, request.Coefficients.SetName, simulated);
}
