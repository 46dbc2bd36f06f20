using WitherAdvisor.Leaf;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Recalibration.Comparison;

/// <summary>What a notebook would say: mean hours by spell and standard, drawn toward the mean of all where there are few.</summary>
internal sealed class AveragesTable
{
    /// <summary>Outcomes that the mean of all is worth.</summary>
    private const double MeanOfAllWeighs = 3;

    private readonly double ofAll;
    private readonly Dictionary<(SpellKind, LeafStandard?), double> means = [];

    public AveragesTable(IReadOnlyList<Occasion> occasions)
    {
        ofAll = occasions.Average(one => one.Wither.HoursOnTrough);
        foreach (IGrouping<(SpellKind, LeafStandard?), Occasion> cell in occasions.GroupBy(Cell))
        {
            double sum = cell.Sum(one => one.Wither.HoursOnTrough) + MeanOfAllWeighs * ofAll;
            means.Add(cell.Key, sum / (cell.Count() + MeanOfAllWeighs));
        }
    }

    public double Hours(Occasion occasion) => means.GetValueOrDefault(Cell(occasion), ofAll);

    private static (SpellKind, LeafStandard?) Cell(Occasion occasion) => (occasion.Wither.Spell, occasion.Wither.Standard);
}
