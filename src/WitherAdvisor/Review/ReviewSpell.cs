using WitherAdvisor.Spells;

namespace WitherAdvisor.Review;

/// <summary>The spell at the end of a day, and the rule that decided it.</summary>
/// <param name="Spell">Its kind and the numbers behind it.</param>
/// <param name="RainOnLeafKgPerKg">Rain that leaf plucked then would carry, kg/kg, unknown hours taken as dry.</param>
/// <param name="Reason">Which rule decided.</param>
public sealed record ReviewSpell(Spell Spell, double RainOnLeafKgPerKg, SpellReason Reason)
{
    /// <summary>Null where too little is known to call it anything.</summary>
    public SpellKind? Kind => Reason == SpellReason.TooLittleKnown ? null : Spell.Kind;
}
