using System.Globalization;
using WitherAdvisor.Fields;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>Reads typed fields into quantities and gathers what is wrong with them, all at once.</summary>
public sealed class FormReader(Wordbook words, IReadOnlyDictionary<string, string> typed)
{
    /// <summary>What is quoted back of an answer that was far too long.</summary>
    private const int LongestQuote = 60;

    private readonly List<FieldProblem> problems = [];

    /// <summary>What problems and labels are told in.</summary>
    public Wordbook Words => words;

    public IReadOnlyList<FieldProblem> Problems => problems;

    public FilledForm Filled => new(typed, problems);

    /// <summary>What was typed, without blanks round it.</summary>
    public string Typed(string field) => typed.GetValueOrDefault(field, "").Trim();

    public void Refuse(string field, string label, string text) => problems.Add(new(field, label, text));

    /// <summary>Takes over what the interface refused, as it says it.</summary>
    public void RefuseInEnglish(string field, string label, string text) => problems.Add(new(field, label, text, Wordbook.English.Tag));

    /// <summary>A text of at most so many characters; null where nothing was typed.</summary>
    public string? Text(string field, string label, int longest, bool required = false)
    {
        string text = Typed(field);
        if (text.Length == 0)
        {
            RefuseMissing(field, label, required);
            return null;
        }

        if (text.Length > longest || text.Any(char.IsControl))
        {
            Refuse(field, label, words.Say("form.too_long", ("given", Quote(text)), ("length", text.Length), ("most", longest)));
            return null;
        }

        if (UnseenCharacters.AnyIn(text))
        {
            Refuse(field, label, words["form.unseen"]);
            return null;
        }

        return text;
    }

    /// <summary>A number within the model's range, from what was typed in the person's unit; null where nothing was typed or it is refused.</summary>
    public double? Number(string field, string label, NumberRange range, bool required = false)
    {
        string text = Typed(field);
        if (text.Length == 0)
        {
            RefuseMissing(field, label, required);
            return null;
        }

        if (!double.TryParse(
                text.Replace('−', '-'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double given)
            || !double.IsFinite(given))
        {
            // A comma is a decimal sign to some and a thousands sign to others, so neither is guessed.
            Refuse(field, label, words.Say("form.no_number", ("given", Quote(text)), ("allowed", range.Allowed(words))));
            return null;
        }

        double? model = range.ToModel(given);
        if (model is null)
        {
            Refuse(field, label, words.Say("form.out_of_range", ("given", Quote(text)), ("unit", range.Unit), ("allowed", range.Allowed(words))));
        }

        return model;
    }

    /// <summary>A date and a 24-hour time, typed in two fields; null where neither was typed or they are refused.</summary>
    public DateTimeOffset? Time(string field, string label, WallClock clock, bool required = false)
    {
        string date = Typed(TimeFields.Date(field));
        string time = Typed(TimeFields.Time(field));
        if (time.Length == 0)
        {
            RefuseMissing(field, label, required);
            return null;
        }

        DateTimeOffset? instant = clock.Read(date, time);
        if (instant is null)
        {
            Refuse(field, label, words.Say("form.no_time", ("given", Quote($"{date} {time}".Trim()))));
        }

        return instant;
    }

    /// <summary>One of the members of an enumeration by name; null where none was chosen.</summary>
    public T? Choice<T>(string field, string label)
        where T : struct, Enum
    {
        string text = Typed(field);
        if (text.Length == 0)
        {
            return null;
        }

        if (Enum.GetNames<T>().Contains(text, StringComparer.Ordinal))
        {
            return Enum.Parse<T>(text);
        }

        Refuse(field, label, words.Say("form.no_choice", ("given", Quote(text))));
        return null;
    }

    private static string Quote(string text) => text.Length <= LongestQuote ? text : text[..LongestQuote] + "…";

    private void RefuseMissing(string field, string label, bool required)
    {
        if (required)
        {
            Refuse(field, label, words["form.missing"]);
        }
    }
}
