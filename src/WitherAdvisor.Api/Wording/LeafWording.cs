using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Wording;

/// <summary>What keeps lots of leaf apart, and how wet leaf feels, in words.</summary>
public static class LeafWording
{
    public static string Name(BushAge age) => age switch
    {
        BushAge.Young => "young bushes",
        BushAge.Mature => "mature bushes",
        _ => throw new ArgumentOutOfRangeException(nameof(age), age, "No words for this bush age."),
    };

    public static string Name(LeafStandard standard) => standard switch
    {
        LeafStandard.Fine => "fine",
        LeafStandard.Medium => "medium",
        LeafStandard.Coarse => "coarse",
        _ => throw new ArgumentOutOfRangeException(nameof(standard), standard, "No words for this standard."),
    };

    /// <summary>How to tell a standard.</summary>
    public static string Test(LeafStandard standard) => standard switch
    {
        LeafStandard.Fine => "three quarters or more by weight two leaves and a bud, or softer",
        LeafStandard.Medium => "between fine and coarse",
        LeafStandard.Coarse => "third leaf and stalk in quantity",
        _ => throw new ArgumentOutOfRangeException(nameof(standard), standard, "No words for this standard."),
    };

    public static string Name(SurfaceFeel feel) => feel switch
    {
        SurfaceFeel.Dry => "dry",
        SurfaceFeel.Damp => "damp",
        SurfaceFeel.Wet => "wet",
        SurfaceFeel.Dripping => "dripping",
        _ => throw new ArgumentOutOfRangeException(nameof(feel), feel, "No words for this feel."),
    };

    /// <summary>The hand test of a feel.</summary>
    public static string Test(SurfaceFeel feel) => feel switch
    {
        SurfaceFeel.Dry => "squeeze a handful: the palm stays dry",
        SurfaceFeel.Damp => "leaves cling together and the palm is moist: dew or light rain",
        SurfaceFeel.Wet => "the palm is wet: rain",
        SurfaceFeel.Dripping => "water runs from a squeezed handful: heavy rain",
        _ => throw new ArgumentOutOfRangeException(nameof(feel), feel, "No words for this feel."),
    };

    /// <summary>"Lower division, field 7" with what else is known.</summary>
    public static string Label(LeafLabel label) => string.Join(", ", Pieces(label));

    private static IEnumerable<string> Pieces(LeafLabel label)
    {
        yield return label.Division;
        yield return label.Field;
        foreach (string further in Further(label))
        {
            yield return further;
        }
    }

    /// <summary>What a label says beside division and field.</summary>
    public static IEnumerable<string> Further(LeafLabel label)
    {
        if (label.Cultivar is { } cultivar)
        {
            yield return cultivar;
        }

        if (label.BushAge is { } age)
        {
            yield return Name(age);
        }

        if (label.Standard is { } standard)
        {
            yield return $"{Name(standard)} plucking";
        }
    }
}
