using WitherAdvisor.Bed;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Recalibration.NextMeasurements;

/// <summary>Withers to ask what would teach: some of the log's for each spell, or one of common practice where it has none.</summary>
internal static class TypicalWithers
{
    private const int OfEachSpell = 4;

    private static readonly DateTimeOffset NoDay = DateTimeOffset.UnixEpoch;

    public static IReadOnlyList<ObservedWither> Of(IReadOnlyList<Occasion> occasions, SpellKind spell)
    {
        ObservedWither[] all = [.. occasions.Select(one => one.Wither).Where(one => one.Spell == spell && one.HoursOnTrough > 2)];
        if (all.Length == 0)
        {
            return [OfPractice(spell)];
        }

        int count = Math.Min(OfEachSpell, all.Length);
        return [.. Enumerable.Range(0, count).Select(i => all[(2 * i + 1) * all.Length / (2 * count)])];
    }

    /// <summary>Common practice at 1,500 m, no published source: the three cases that the model was set up on.</summary>
    private static ObservedWither OfPractice(SpellKind spell) => spell switch
    {
        SpellKind.Wet => Practice(spell, rainMm: 0.18, stress: 1, plenumC: 26.5, differenceK: 7.2, hours: 12, turnEvery: 2),
        SpellKind.DryWindy => Practice(spell, rainMm: 0, stress: 0.3, plenumC: 22.5, differenceK: 7.2, hours: 6.5, turnEvery: 1),
        _ => Practice(spell, rainMm: 0.045, stress: 0.7, plenumC: 26, differenceK: 7.2, hours: 9.25, turnEvery: 1),
    };

    private static ObservedWither Practice(
        SpellKind spell, double rainMm, double stress, double plenumC, double differenceK, double hours, int turnEvery)
    {
        const double PressurePa = 84_560;
        const double LoadKgPerM2 = 28;
        return new(
            $"practice-{spell}", NoDay, spell, null, null,
            new(rainMm, 0, 0, 0.01, true, stress, 0.05, true, 2, null), LoadingReadings.None,
            LoadKgPerM2, 1, Trough.UsualAirflowM3PerSM2, PressurePa,
            [InletAir.FromDifference(plenumC, differenceK, PressurePa)], true,
            [.. Enumerable.Range(1, (int)hours / turnEvery).Select(turn => (double)turn * turnEvery)], hours, new());
    }
}
