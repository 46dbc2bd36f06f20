using WitherAdvisor.Leaf;

namespace WitherAdvisor.Words.Leaf;

/// <summary>What keeps lots of leaf apart, in words.</summary>
public static class LeafWording
{
    /// <summary>"Lower division, field 7" with what else is known.</summary>
    public static string Label(Wordbook words, LeafLabel label) => string.Join(", ", Pieces(words, label));

    private static IEnumerable<string> Pieces(Wordbook words, LeafLabel label)
    {
        yield return label.Division;
        yield return label.Field;
        foreach (string further in Further(words, label))
        {
            yield return further;
        }
    }

    /// <summary>What a label says beside division and field.</summary>
    public static IEnumerable<string> Further(Wordbook words, LeafLabel label)
    {
        if (label.Cultivar is { } cultivar)
        {
            yield return cultivar;
        }

        if (label.BushAge is { } age)
        {
            yield return words.Name(age);
        }

        if (label.Standard is { } standard)
        {
            yield return words.Say("leaf.plucking", ("standard", words.Name(standard)));
        }
    }
}
