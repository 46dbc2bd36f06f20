namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>Counts rows by what they come to, and remembers those that are shown: of a long file not all.</summary>
internal sealed class ImportTally
{
    private readonly List<ImportRowAnswer> unfit = [];
    private readonly List<ImportRowAnswer> fit = [];
    private readonly Dictionary<RowState, int> counts = [];

    public bool AllFit => Count(RowState.Wrong) + Count(RowState.Odd) == 0;

    public bool AddsAny => Count(RowState.New) + Count(RowState.OutcomeAdded) > 0;

    public IReadOnlyList<ImportRowAnswer> Unfit => unfit;

    public void Add(ImportRowAnswer row)
    {
        counts[row.State] = Count(row.State) + 1;
        List<ImportRowAnswer> list = row.State is RowState.Wrong or RowState.Odd ? unfit : fit;
        if (list.Count < ImportAnswer.MostShown)
        {
            list.Add(row);
        }
    }

    public ImportAnswer ToAnswer(bool kept) => new()
    {
        Kept = kept,
        Rows = counts.Values.Sum(),
        New = Count(RowState.New),
        OutcomesAdded = Count(RowState.OutcomeAdded),
        AlreadyThere = Count(RowState.AlreadyThere),
        Odd = Count(RowState.Odd),
        Wrong = Count(RowState.Wrong),
        Report = [.. unfit.Concat(fit).Take(ImportAnswer.MostShown)],
    };

    private int Count(RowState state) => counts.GetValueOrDefault(state);
}
