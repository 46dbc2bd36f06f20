namespace WitherAdvisor.Loft.Importing;

/// <summary>Counts lines by what they come to, and remembers those that are shown: of a long file not all.</summary>
public sealed class ImportTally<TLine>
    where TLine : ILogLine
{
    private readonly List<JudgedLine<TLine>> unfit = [];
    private readonly List<JudgedLine<TLine>> fit = [];
    private readonly Dictionary<RowState, int> counts = [];

    public bool AllFit => Count(RowState.Wrong) + Count(RowState.Odd) == 0;

    public bool AddsAny => Count(RowState.New) + Count(RowState.OutcomeAdded) > 0;

    public int Lines => counts.Values.Sum();

    /// <summary>Wrong and odd ones, the first of them.</summary>
    public IReadOnlyList<JudgedLine<TLine>> Unfit => unfit;

    /// <summary>The lines, wrong and odd ones first, at most <see cref="ImportLimits.MostShown"/>.</summary>
    public IEnumerable<JudgedLine<TLine>> Shown => unfit.Concat(fit).Take(ImportLimits.MostShown);

    public int Count(RowState state) => counts.GetValueOrDefault(state);

    internal void Add(JudgedLine<TLine> line)
    {
        counts[line.State] = Count(line.State) + 1;
        List<JudgedLine<TLine>> list = line.State is RowState.Wrong or RowState.Odd ? unfit : fit;
        if (list.Count < ImportLimits.MostShown)
        {
            list.Add(line);
        }
    }
}
