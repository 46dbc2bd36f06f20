namespace WitherAdvisor.WeatherFeeds;

/// <summary>Gathers what has to be said of an answer: one note for a kind of thing however many hours it happened in.</summary>
internal sealed class NoteBook
{
    private readonly List<Entry> entries = [];

    public IReadOnlyList<FeedNote> Notes => [.. entries.Select(entry => entry.Note)];

    public void Say(string code, string text) => entries.Add(new(code, text));

    /// <summary>Counts an hour under a sentence without a full stop, such as "precipitation is unknown".</summary>
    public void Count(string code, string sentence, DateTimeOffset hour)
    {
        Entry? entry = entries.Find(known => known.Code == code && known.Sentence == sentence);
        if (entry is null)
        {
            entries.Add(entry = new(code, sentence));
        }

        entry.Add(hour);
    }

    private sealed class Entry(string code, string sentence)
    {
        private DateTimeOffset first;
        private int hours;

        public string Code => code;

        public string Sentence => sentence;

        public FeedNote Note => new(code, hours switch
        {
            0 => sentence,
            1 => $"{sentence}: the hour of {first:yyyy-MM-dd'T'HH:mm'Z'}.",
            _ => $"{sentence}: {hours} hours, the first {first:yyyy-MM-dd'T'HH:mm'Z'}.",
        });

        public void Add(DateTimeOffset hour)
        {
            first = hours == 0 || hour < first ? hour : first;
            hours++;
        }
    }
}
