using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Words.Learning;

/// <summary>What a recalibration did and found, in a sentence each.</summary>
public static class RecalibrationWording
{
    public static string LeftOut(LeftOutReason reason) => reason switch
    {
        LeftOutReason.HoursUnknown => "Nobody knows when it left the trough.",
        LeftOutReason.WeatherUnknown =>
            "Too little is known of the weather before plucking, and nobody measured or felt the water on the leaf.",
        LeftOutReason.NothingFound => "Nothing was weighed or oven-dried.",
        LeftOutReason.NoAir => "The air under the mesh is not known for any hour.",
        LeftOutReason.AirOutOfRange => "Air under the mesh is out of any trough's range.",
        LeftOutReason.HoursOutOfRange => "Hours on the trough are not between 0.1 and 60.",
        LeftOutReason.LoadOutOfRange => "Green weight, area, airflow or pressure is out of any trough's range.",
        LeftOutReason.HeavierThanGreen => "The withered leaf weighs no less than the green.",
        LeftOutReason.FindingOutOfRange => "A weight or moisture found is not possible.",
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "No words for this reason."),
    };

    /// <summary>Whether the proposal is worth adopting.</summary>
    /// <param name="verdict">On it.</param>
    /// <param name="used">Outcomes fitted.</param>
    /// <param name="holdOut">What the verdict is from; null where there were too few to hold any out.</param>
    public static string Verdict(Verdict verdict, int used, HoldOut? holdOut) => verdict switch
    {
        { FewestOutcomes: int fewest } =>
            $"{used} of at least {fewest} outcomes: too few to tell a loft from one odd night. The proposal is what was believed before any outcome.",
        { Kind: VerdictKind.TooFewOutcomes } =>
            $"{used} outcomes are too few to hold any out: whether the proposal is better than the current set is not known.",
        _ => $"{(verdict.Kind == VerdictKind.BetterThanCurrent ? "Better than the current set" : "Not better than the current set")} on {Compared(holdOut!)}",
    };

    public static string Drift(Drift drift) => drift.CanBeTold
        ? $"Ready times come {Math.Abs(drift.PerYear):0.0%} {(drift.PerYear > 0 ? "sooner" : "later")} each year than one set for all years says: leaf, loft or measuring has changed."
        : "No drift over time can be told from chance.";

    /// <summary>A measurement that would teach, and how much.</summary>
    public static string Next(NextMeasurement next) =>
        $"On {Leaf(next.Spell)} leaf: {Measurement(next.Code)}. The coefficients leave the ready time open by ±{next.ReadySpreadBefore:0.0%}; one such measurement removes {next.VarianceDrop:0.0%} of that variance.";

    /// <summary>Two coefficients that the outcomes hardly tell apart.</summary>
    public static string Alike(CorrelationWarning pair) =>
        $"The outcomes hardly tell apart {Subject(pair.First)} and {Subject(pair.Second)}: {(pair.Correlation < 0 ? "more of one does as less of the other" : "they go up and down together")}.";

    /// <summary>What was learned of a coefficient, as a maker would say it.</summary>
    public static string Learned(CoefficientLearning learned) => learned.Told == HowWellTold.NotTold
        ? $"The outcomes could not tell {Subject(learned.Name)}; it stays near what was assumed."
        : $"{Change(learned.Name, learned.Before, learned.After)}{(learned.Told == HowWellTold.Partly ? " The outcomes tell it in part." : "")}";

    /// <summary>What a coefficient is of.</summary>
    private static string Subject(string coefficient) => coefficient switch
    {
        nameof(WitherCoefficients.SkinConductanceMPerS) => "how freely the leaf gives up its water",
        nameof(WitherCoefficients.BoundaryConductanceMPerS) => "how freely vapour leaves the leaf's surface",
        nameof(WitherCoefficients.SurfaceCapacityKgPerKg) => "how much water wets the whole leaf",
        nameof(WitherCoefficients.TurnBlend) => "how well a turn mixes the bed",
        nameof(WitherCoefficients.AirflowFactor) => "how much air the troughs blow",
        nameof(WitherCoefficients.SurfaceRetention) => "how much of the field's water stays on plucked leaf",
        nameof(WitherCoefficients.DroughtMoistureWetBasis) => "how moist leaf is in drought",
        nameof(WitherCoefficients.DroughtToWetMoistureGain) => "how much moister leaf is in the rains",
        _ => throw new ArgumentOutOfRangeException(nameof(coefficient), coefficient, "No words for this coefficient."),
    };

    private static string Change(string coefficient, double before, double after) => coefficient switch
    {
        nameof(WitherCoefficients.SkinConductanceMPerS) => $"Your leaf gives up its water {Faster(after / before)} than assumed.",
        nameof(WitherCoefficients.BoundaryConductanceMPerS) => $"Vapour leaves the leaf's surface {Faster(after / before)} than assumed.",
        nameof(WitherCoefficients.SurfaceCapacityKgPerKg) => $"It takes {More(after / before)} water to wet the whole leaf than assumed.",
        nameof(WitherCoefficients.TurnBlend) => $"A turn mixes {after:0%} of the way to even, where {before:0%} was assumed.",
        nameof(WitherCoefficients.AirflowFactor) => $"Your troughs blow {More(after / before)} air than assumed.",
        nameof(WitherCoefficients.SurfaceRetention) => after < before
            ? $"In wet spells the estimate of surface water was {before / after - 1:0%} too high."
            : $"In wet spells the estimate of surface water was {1 - before / after:0%} too low.",
        nameof(WitherCoefficients.DroughtMoistureWetBasis) => $"Leaf in drought has {after:0.0%} moisture, where {before:0.0%} was assumed.",
        nameof(WitherCoefficients.DroughtToWetMoistureGain) =>
            $"From drought to rains leaf gains {100 * after:0.0} points of moisture, where {100 * before:0.0} were assumed.",
        _ => throw new ArgumentOutOfRangeException(nameof(coefficient), coefficient, "No words for this coefficient."),
    };

    /// <summary>What to measure, as a thing to do.</summary>
    private static string Measurement(string code) => code switch
    {
        "surface_water_at_loading" => "weigh a sample at loading before and after spinning or blotting it",
        "oven_test_at_loading" => "oven-dry a sample at loading",
        "sample_at_2_hours" => "weigh a sample at loading and again after 2 hours",
        "weight_at_unloading" => "weigh all leaf of the trough at unloading",
        "oven_test_at_unloading" => "oven-dry a sample at unloading",
        "bottom_and_top_at_unloading" => "oven-dry samples from the mesh and from the top at unloading",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No words for this measurement."),
    };

    private static string Leaf(SpellKind spell) => spell switch
    {
        SpellKind.Wet => "wet",
        SpellKind.DryWindy => "dry windy",
        SpellKind.Ordinary => "ordinary",
        _ => throw new ArgumentOutOfRangeException(nameof(spell), spell, "No words for this spell."),
    };

    private static string Compared(HoldOut holdOut) =>
        $"{holdOut.Proposed.ReadyTimes} outcomes it had not seen: the ready time is off by {holdOut.Proposed.MeanAbsoluteHours:0.00} h on average, against {holdOut.Current.MeanAbsoluteHours:0.00} h by the current set and {holdOut.Averages.MeanAbsoluteHours:0.00} h by a table of averages; by the site's set for all leaf {holdOut.ProposedSiteAlone.MeanAbsoluteHours:0.00} h.";

    private static string Faster(double ratio) => ratio >= 1 ? $"{ratio - 1:0%} faster" : $"{1 - ratio:0%} slower";

    private static string More(double ratio) => ratio >= 1 ? $"{ratio - 1:0%} more" : $"{1 - ratio:0%} less";
}
