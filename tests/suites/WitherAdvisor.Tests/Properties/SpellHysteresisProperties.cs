using FsCheck.Xunit;
using WitherAdvisor.Spells;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>Between its two thresholds a spell stays what it was: no season flaps on paper.</summary>
[Properties(Arbitrary = [typeof(AnySpellDays)], MaxTest = 10_000)]
public sealed class SpellHysteresisProperties
{
    [Property]
    public void Days_between_the_thresholds_leave_every_spell_as_it_was(AnySpellDays days)
    {
        Assert.All(days.From(SpellKind.Ordinary), kind => Assert.Equal(SpellKind.Ordinary, kind));
        Assert.All(days.From(SpellKind.Wet), kind => Assert.Equal(SpellKind.Wet, kind));
        Assert.All(days.From(SpellKind.DryWindy), kind => Assert.Equal(SpellKind.DryWindy, kind));
    }
}
