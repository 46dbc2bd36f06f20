using FsCheck;
using FsCheck.Fluent;
using WitherAdvisor.Spells;
using WitherAdvisor.Tests.Air;

namespace WitherAdvisor.Tests.Properties;

/// <summary>Days that wobble between the threshold where a spell begins and the one where it ends, touching neither.</summary>
public sealed class AnySpellDays
{
    private const double PowerThreshold = 3;

    private static readonly SpellThresholds Thresholds = new();

    private readonly SpellDay[] days;

    private AnySpellDays(SpellDay[] days) => this.days = days;

    public static Arbitrary<AnySpellDays> Days() =>
        Gen.Choose(5, 40).SelectMany(count => Gen.ArrayOf(Between, count)).Select(days => new AnySpellDays(days)).ToArbitrary();

    /// <summary>The spells of the days one after another, from one that had begun.</summary>
    public IEnumerable<SpellKind> From(SpellKind begun)
    {
        SpellKind kind = begun;
        foreach (SpellDay day in days)
        {
            kind = SpellJudgement.Next(kind, day, PowerThreshold, Thresholds).Kind;
            yield return kind;
        }
    }

    public override string ToString() => string.Join("; ", days);

    private static Gen<SpellDay> Between =>
        from rain72 in AnyAir.Between(Thresholds.WetEndsBelowRainIn72HoursMm, Thresholds.WetRainIn72HoursMm - 0.01)
        from more in AnyAir.Between(0, 3)
        from stress in AnyAir.Between(Thresholds.DryStressBelow, Thresholds.DryEndsAboveStress)
        from leaf in AnyAir.Between(Thresholds.WetEndsBelowLeafKgPerKg, Thresholds.WetLeafKgPerKg - 0.001)
        from power in AnyAir.Between(Thresholds.DryEndsBelowPowerShare, 1).Select(share => share * PowerThreshold)
        let tenDays = Math.Min(rain72 + more, Thresholds.DryEndsAtRainIn10DaysMm - 0.01)
        select new SpellDay(new(Math.Min(rain72, tenDays), 1), new(tenDays, 1), stress, leaf, power);
}
