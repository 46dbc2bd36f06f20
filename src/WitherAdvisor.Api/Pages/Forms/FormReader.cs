using System.Globalization;
using WitherAdvisor.Api.Wording;

namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>Reads typed fields into quantities and gathers what is wrong with them, all at once.</summary>
public sealed class FormReader(IReadOnlyDictionary<string, string> typed)
{
    /// <summary>What is quoted back of an answer that was far too long.</summary>
    private const int LongestQuote = 60;

    private readonly List<FieldProblem> problems = [];

    public IReadOnlyList<FieldProblem> Problems => problems;

    public FilledForm Filled => new(typed, problems);

    /// <summary>What was typed, without blanks round it.</summary>
    public string Typed(string field) => typed.GetValueOrDefault(field, "").Trim();

    public void Refuse(string field, string label, string text) => problems.Add(new(field, label, text));

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
            Refuse(field, label, $"“{Quote(text)}” was given ({text.Length} characters); at most {longest} on one line are allowed.");
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

        if (!double.TryParse(text.Replace('−', '-'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double given)
            || !double.IsFinite(given))
        {
            // A comma is a decimal sign to some and a thousands sign to others, so neither is guessed.
            Refuse(field, label, $"“{Quote(text)}” was given; a number such as 1250.5 is wanted, with a point and no comma. {range.Allowed}");
            return null;
        }

        double? model = range.ToModel(given);
        if (model is null)
        {
            Refuse(field, label, $"{Quote(text)} {range.Unit} was given. {range.Allowed}");
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
            Refuse(field, label, $"“{Quote($"{date} {time}".Trim())}” was given; a date and a 24-hour site time such as 14:05 are wanted, one that the clock there does not skip.");
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

        Refuse(field, label, $"“{Quote(text)}” was given; choose one of those on the page.");
        return null;
    }

    private static string Quote(string text) => text.Length <= LongestQuote ? text : text[..LongestQuote] + "…";

    private void RefuseMissing(string field, string label, bool required)
    {
        if (required)
        {
            Refuse(field, label, "Nothing was given; it is needed.");
        }
    }
}
