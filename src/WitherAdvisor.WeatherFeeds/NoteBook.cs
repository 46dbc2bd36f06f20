namespace WitherAdvisor.WeatherFeeds;

/// <summary>Gathers what has to be said of an answer: one note for a kind of thing however many hours it happened in.</summary>
internal sealed class NoteBook
{
    private readonly List<FeedNote> notes = [];

    public IReadOnlyList<FeedNote> Notes => [.. notes];

    public void Say(FeedNote note) => notes.Add(note);

    /// <summary>Adds the hours of a note to those of one that says the same.</summary>
    public void Count(FeedNote.Counted more)
    {
        int place = notes.FindIndex(note => note is FeedNote.Counted counted && OfNoHour(counted) == OfNoHour(more));
        if (place < 0)
        {
            notes.Add(more);
            return;
        }

        var known = (FeedNote.Counted)notes[place];
        notes[place] = known with
        {
            Hours = known.Hours + more.Hours,
            First = more.First < known.First ? more.First : known.First,
        };
    }

    private static FeedNote.Counted OfNoHour(FeedNote.Counted note) => note with { Hours = 0, First = default };
}
