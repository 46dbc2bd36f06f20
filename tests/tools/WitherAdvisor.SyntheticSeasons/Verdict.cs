using WitherAdvisor.Advice;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Spells;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>An advice against what came of it.</summary>
/// <param name="Spell">The spell that the advice saw.</param>
/// <param name="Style">The site's style.</param>
/// <param name="Forecast">Whether the night was forecast.</param>
/// <param name="Ready">What it said of the ready time, hours.</param>
/// <param name="TrueHour">When the leaf was ready; beyond all where it never was.</param>
public sealed record Verdict(SpellKind Spell, string Style, bool Forecast, Percentiles Ready, double TrueHour)
{
    /// <summary>The verdict on the batch of a number; null where no plan could be advised.</summary>
    public static Verdict? Of(ulong number, double wider, Withheld withheld, double? skinOff = null)
    {
        SyntheticBatch batch = SyntheticBatch.Draw(number, wider, skinOff);
        return Advisor.Advise(withheld.From(batch.Request, number)) is AdviceOutcome.Advised advised
            ? new(
                advised.KnownLeaf.Spell.Kind, batch.Request.Site.Style.Name, batch.Request.Forecast.Count > 0,
                advised.ReadyHours, TrueWither.ReadyHour(batch, advised.Plan) ?? double.PositiveInfinity)
            : null;
    }

    /// <summary>Below the tenth percentile.</summary>
    public bool Early => TrueHour < (Ready.P10 ?? double.PositiveInfinity);

    /// <summary>Above the ninetieth.</summary>
    public bool Late => TrueHour > (Ready.P90 ?? double.PositiveInfinity);

    public bool BelowMedian => TrueHour <= (Ready.P50 ?? double.PositiveInfinity);

    public bool Held => !Early && !Late;
}
