using WitherAdvisor.Air;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>Outcomes made ready, oldest first, and those that could not be used.</summary>
internal sealed record UsableOutcomes(IReadOnlyList<Occasion> Occasions, LeafGroup[] Groups, IReadOnlyList<LeftOut> LeftOut)
{
    public static UsableOutcomes Of(IReadOnlyList<ObservedWither> outcomes, MeasurementErrors errors)
    {
        var usable = new List<ObservedWither>();
        var leftOut = new List<LeftOut>();
        foreach (ObservedWither outcome in Screening.InOrder(outcomes))
        {
            if (Screening.Reason(outcome) is { } reason)
            {
                leftOut.Add(reason);
            }
            else
            {
                usable.Add(outcome);
            }
        }

        LeafGroup[] groups = LeafGroup.Among(usable);
        var tables = new Dictionary<double, SaturationTable>();
        return new([.. usable.Select(one => new Occasion(one, Array.IndexOf(groups, LeafGroup.Of(one)), errors, tables))], groups, leftOut);
    }
}
