namespace WitherAdvisor.Words;

/// <summary>Reads a text with gaps.</summary>
internal sealed class PatternReader(string text)
{
    private readonly List<PatternPart> parts = [];

    public IReadOnlyList<PatternPart> Read()
    {
        for (int at = 0; at < text.Length;)
        {
            if (text[at] == '{')
            {
                int end = Closing(at);
                parts.Add(Gap(text[(at + 1)..end]));
                at = end + 1;
            }
            else
            {
                int next = text.IndexOf('{', at);
                int end = next < 0 ? text.Length : next;
                parts.Add(new(false, text[at..end], []));
                at = end;
            }
        }

        return parts.Count > 0 ? parts : [new(false, "", [])];
    }

    private static PatternPart Gap(string inside)
    {
        List<string> pieces = Pieces(inside);
        return new(true, pieces[0], [.. pieces.Skip(1).Select(Pattern.Of)]);
    }

    /// <summary>What stands between bars, but not between those of a gap within.</summary>
    private static List<string> Pieces(string inside)
    {
        List<string> pieces = [];
        int depth = 0;
        int start = 0;
        for (int at = 0; at < inside.Length; at++)
        {
            depth += inside[at] switch { '{' => 1, '}' => -1, _ => 0 };
            if (inside[at] == '|' && depth == 0)
            {
                pieces.Add(inside[start..at]);
                start = at + 1;
            }
        }

        pieces.Add(inside[start..]);
        return pieces;
    }

    private int Closing(int open)
    {
        int depth = 0;
        for (int at = open; at < text.Length; at++)
        {
            depth += text[at] switch { '{' => 1, '}' => -1, _ => 0 };
            if (depth == 0)
            {
                return at;
            }
        }

        throw new FormatException($"A gap is not closed: {text}");
    }
}
