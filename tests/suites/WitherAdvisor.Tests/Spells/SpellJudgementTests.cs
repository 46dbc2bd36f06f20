using WitherAdvisor.Spells;
using Xunit;

namespace WitherAdvisor.Tests.Spells;

/// <summary>Day by day at the thresholds, which are those of the model's defaults: once begun, a spell is let go later than it was begun.</summary>
public sealed class SpellJudgementTests
{
    private const double Threshold = 4;

    private static readonly SpellThresholds Thresholds = new();

    private static readonly SpellDay Drought = new(new(0, 1), new(0, 1), 0.5, 0, 5);

    public static TheoryData<SpellKind, double, double, double, double, double, SpellKind> Days => new()
    {
        // Before; rain in 72 h, in 10 days, mm; K_s; rain on leaf, kg/kg; drying power; after.
        { SpellKind.Ordinary, 24, 24, 1, 0.04, 1, SpellKind.Ordinary },
        { SpellKind.Ordinary, 25, 25, 1, 0, 1, SpellKind.Wet },
        { SpellKind.Ordinary, 0, 0, 1, 0.05, 1, SpellKind.Wet },
        { SpellKind.Wet, 12, 40, 1, 0, 1, SpellKind.Wet },
        { SpellKind.Wet, 11, 40, 1, 0.03, 1, SpellKind.Wet },
        { SpellKind.Wet, 11, 40, 1, 0.02, 1, SpellKind.Ordinary },
        { SpellKind.Ordinary, 11, 40, 1, 0.04, 1, SpellKind.Ordinary },
        { SpellKind.Ordinary, 0, 4, 0.79, 0, 4, SpellKind.DryWindy },
        { SpellKind.Ordinary, 0, 4, 0.79, 0, 3.9, SpellKind.Ordinary },
        { SpellKind.Ordinary, 0, 4, 0.81, 0, 4, SpellKind.Ordinary },
        { SpellKind.Ordinary, 0, 6, 0.79, 0, 4, SpellKind.Ordinary },
        { SpellKind.DryWindy, 0, 19, 0.9, 0, 2.4, SpellKind.DryWindy },
        { SpellKind.DryWindy, 0, 20, 0.9, 0, 2.4, SpellKind.Ordinary },
        { SpellKind.DryWindy, 0, 19, 0.91, 0, 2.4, SpellKind.Ordinary },
        { SpellKind.DryWindy, 0, 19, 0.9, 0, 2.3, SpellKind.Ordinary },
    };

    [Theory]
    [MemberData(nameof(Days))]
    public void A_day_is_judged_by_the_spell_before_it(
        SpellKind before, double in72HoursMm, double in10DaysMm, double stress, double onLeaf, double power, SpellKind after) =>
        Assert.Equal(after, SpellJudgement.Next(before, new(new(in72HoursMm, 1), new(in10DaysMm, 1), stress, onLeaf, power), Threshold, Thresholds).Kind);

    [Fact]
    public void Wind_that_nobody_measured_ends_no_dry_windy_spell_and_begins_none()
    {
        SpellDay unmeasured = Drought with { DryingPowerKPaMPerS = null };

        Assert.Equal(SpellKind.DryWindy, SpellJudgement.Next(SpellKind.DryWindy, unmeasured, Threshold, Thresholds).Kind);
        Assert.Equal(SpellKind.Ordinary, SpellJudgement.Next(SpellKind.Ordinary, unmeasured, Threshold, Thresholds).Kind);
        Assert.Equal(SpellReason.TooLittleKnown, SpellJudgement.Next(SpellKind.Ordinary, unmeasured with { RainIn72Hours = new(0, 0.5) }, Threshold, Thresholds).Reason);
    }
}
