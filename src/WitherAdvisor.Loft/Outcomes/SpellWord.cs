using WitherAdvisor.Spells;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>The spell that the figures of an advice name.</summary>
public static class SpellWord
{
    /// <summary>Null where they name none.</summary>
    public static SpellKind? Read(string? word) =>
        Enum.GetValues<SpellKind>().Cast<SpellKind?>().FirstOrDefault(kind => KeptWord.Of(kind!.Value) == word);
}
