using System.Text.Json;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Reading;

/// <summary>Reads one column of an answer into the library's units; what cannot be believed becomes unknown, with a note.</summary>
internal sealed class HourlyColumn(JsonElement hourly, JsonElement units, DateTimeOffset[] hours, NoteBook notes)
{
    /// <summary>Null where the column can be used or is absent; absent, <paramref name="values"/> is null.</summary>
    public Refused? Read(HourlyVariable variable, out double?[]? values)
    {
        values = null;
        if (!hourly.TryGetProperty(variable.Name, out JsonElement column))
        {
            notes.Say("missing_column", $"The feed gave no {variable.Name}: it is unknown in all hours.");
            return null;
        }

        if (column.ValueKind != JsonValueKind.Array)
        {
            return new(RefusalReason.WrongShape, $"{variable.Name} is not a list in the feed's answer.");
        }

        if (column.GetArrayLength() != hours.Length)
        {
            return new(RefusalReason.WrongShape,
                $"The feed gave {column.GetArrayLength()} values of {variable.Name} for {hours.Length} hours: which belongs to which is unknown.");
        }

        return Unit(variable, out Func<double, double> convert) ?? Values(variable, column, convert, out values);
    }

    private Refused? Unit(HourlyVariable variable, out Func<double, double> convert)
    {
        convert = value => value;
        if (!units.TryGetProperty(variable.Name, out JsonElement unit) || unit.ValueKind != JsonValueKind.String)
        {
            return new(RefusalReason.WrongUnits, $"The feed does not say in which unit {variable.Name} is.");
        }

        if (variable.From(unit.GetString()!) is not { } known)
        {
            return new(RefusalReason.WrongUnits, $"The feed gives {variable.Name} in a unit that is not known; {variable.AskedUnit} was asked.");
        }

        if (unit.GetString() != variable.AskedUnit)
        {
            notes.Say("converted_units", $"{variable.Name} came in {unit.GetString()} though {variable.AskedUnit} was asked, and was converted.");
        }

        convert = known;
        return null;
    }

    private Refused? Values(HourlyVariable variable, JsonElement column, Func<double, double> convert, out double?[]? values)
    {
        values = new double?[hours.Length];
        int place = 0;
        foreach (JsonElement cell in column.EnumerateArray())
        {
            if (cell.ValueKind is not (JsonValueKind.Number or JsonValueKind.Null))
            {
                return new(RefusalReason.WrongShape, $"Value {place + 1} of {variable.Name} is neither a number nor null.");
            }

            values[place] = Value(variable, cell, convert, hours[place]);
            place++;
        }

        return null;
    }

    private double? Value(HourlyVariable variable, JsonElement cell, Func<double, double> convert, DateTimeOffset hour)
    {
        if (cell.ValueKind == JsonValueKind.Null || !cell.TryGetDouble(out double raw))
        {
            notes.Count("unknown_hours", $"{variable.Name} is unknown", hour);
            return null;
        }

        double value = convert(raw);
        if (variable.IsPossible(value))
        {
            return value;
        }

        notes.Count("impossible_values", $"{variable.Name} held what no weather can have and was taken as unknown", hour);
        return null;
    }
}
