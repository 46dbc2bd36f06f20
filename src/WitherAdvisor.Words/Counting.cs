namespace WitherAdvisor.Words;

/// <summary>Which form of a word a language uses for a number of things. A table names its rule under "language.counting".</summary>
/// <remarks>The rules are those of the Unicode CLDR for whole numbers.</remarks>
internal sealed class Counting
{
    private readonly Func<int, int> form;

    /// <summary>"one_other" as in English, "zero_one_other" as in Hindi, "one_few_many" as in Russian, "other" where words do not change.</summary>
    public Counting(string rule)
    {
        Forms = rule switch { "other" => 1, "one_other" or "zero_one_other" => 2, "one_few_many" => 3, _ => throw Unknown(rule) };
        form = rule switch
        {
            "other" => static _ => 0,
            "one_other" => static count => count == 1 ? 0 : 1,
            "zero_one_other" => static count => count is 0 or 1 ? 0 : 1,
            _ => Slavic,
        };
    }

    /// <summary>How many forms each counted gap of the table has.</summary>
    public int Forms { get; }

    /// <summary>0 is the first of the forms in a gap.</summary>
    public int FormOf(int count) => form(count);

    private static ArgumentException Unknown(string rule) => new($"There is no rule of counting called {rule}.", nameof(rule));

    private static int Slavic(int count) => (count % 10, count % 100) switch
    {
        (_, >= 11 and <= 14) => 2,
        (1, _) => 0,
        (2 or 3 or 4, _) => 1,
        _ => 2,
    };
}
