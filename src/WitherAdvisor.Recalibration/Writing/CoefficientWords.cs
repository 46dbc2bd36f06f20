using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Writing;

/// <summary>What was learned of a coefficient, as a maker would say it.</summary>
internal static class CoefficientWords
{
    public static string Of(int at, double before, double after, HowWellTold told) => told == HowWellTold.NotTold
        ? $"The outcomes could not tell {Subject(at)}; it stays near what was assumed."
        : $"{Change(at, before, after)}{(told == HowWellTold.Partly ? " The outcomes tell it in part." : "")}";

    /// <summary>What a coefficient is of.</summary>
    public static string Subject(int at) => at switch
    {
        FittedCoefficient.Skin => "how freely the leaf gives up its water",
        FittedCoefficient.Film => "how freely vapour leaves the leaf's surface",
        FittedCoefficient.SurfaceCapacity => "how much water wets the whole leaf",
        FittedCoefficient.TurnBlend => "how well a turn mixes the bed",
        FittedCoefficient.Airflow => "how much air the troughs blow",
        FittedCoefficient.Retention => "how much of the field's water stays on plucked leaf",
        FittedCoefficient.DroughtMoisture => "how moist leaf is in drought",
        _ => "how much moister leaf is in the rains",
    };

    private static string Change(int at, double before, double after) => at switch
    {
        FittedCoefficient.Skin => $"Your leaf gives up its water {Faster(after / before)} than assumed.",
        FittedCoefficient.Film => $"Vapour leaves the leaf's surface {Faster(after / before)} than assumed.",
        FittedCoefficient.SurfaceCapacity => $"It takes {More(after / before)} water to wet the whole leaf than assumed.",
        FittedCoefficient.TurnBlend => $"A turn mixes {after:0%} of the way to even, where {before:0%} was assumed.",
        FittedCoefficient.Airflow => $"Your troughs blow {More(after / before)} air than assumed.",
        FittedCoefficient.Retention => after < before
            ? $"In wet spells the estimate of surface water was {before / after - 1:0%} too high."
            : $"In wet spells the estimate of surface water was {1 - before / after:0%} too low.",
        FittedCoefficient.DroughtMoisture => $"Leaf in drought has {after:0.0%} moisture, where {before:0.0%} was assumed.",
        _ => $"From drought to rains leaf gains {100 * after:0.0} points of moisture, where {100 * before:0.0} were assumed.",
    };

    private static string Faster(double ratio) => ratio >= 1 ? $"{ratio - 1:0%} faster" : $"{1 - ratio:0%} slower";

    private static string More(double ratio) => ratio >= 1 ? $"{ratio - 1:0%} more" : $"{1 - ratio:0%} less";
}
