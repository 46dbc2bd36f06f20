namespace WitherAdvisor.Words.Units;

/// <summary>Dates without a clock, in words.</summary>
public static class CalendarDates
{
    /// <summary>"24 Nov – 2 Dec 2026"; both years where they are two.</summary>
    public static string Span(Wordbook words, DateOnly first, DateOnly last) => words.Say(
        "calendar.span",
        ("first", first.Year == last.Year ? WithoutYear(words, first) : WithYear(words, first)),
        ("last", WithYear(words, last)));

    /// <summary>"Nov", by its number.</summary>
    public static string Month(Wordbook words, int month) => words[MonthKey(month)];

    internal static string MonthKey(int month) => $"month.{month}";

    private static string WithoutYear(Wordbook words, DateOnly date) =>
        words.Say("clock.day_of_month", ("day", date.Day), ("month", Month(words, date.Month)));

    private static string WithYear(Wordbook words, DateOnly date) =>
        words.Say("calendar.date", ("day", date.Day), ("month", Month(words, date.Month)), ("year", date.Year));
}
