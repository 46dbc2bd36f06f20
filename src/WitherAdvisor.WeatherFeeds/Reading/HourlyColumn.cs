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
            notes.Say(new FeedNote.MissingColumn(variable.Name));
            return null;
        }

        if (column.ValueKind != JsonValueKind.Array)
        {
            return new(RefusalReason.WrongShape, new FeedFault.NotAList(variable.Name));
        }

        if (column.GetArrayLength() != hours.Length)
        {
            return new(RefusalReason.WrongShape, new FeedFault.OtherLength(variable.Name, column.GetArrayLength(), hours.Length));
        }

        return Unit(variable, out Func<double, double> convert) ?? Values(variable, column, convert, out values);
    }

    private Refused? Unit(HourlyVariable variable, out Func<double, double> convert)
    {
        convert = value => value;
        if (!units.TryGetProperty(variable.Name, out JsonElement unit) || unit.ValueKind != JsonValueKind.String)
        {
            return new(RefusalReason.WrongUnits, new FeedFault.UnitUnsaid(variable.Name));
        }

        if (variable.From(unit.GetString()!) is not { } known)
        {
            return new(RefusalReason.WrongUnits, new FeedFault.UnitUnknown(variable.Name, variable.AskedUnit));
        }

        if (unit.GetString() != variable.AskedUnit)
        {
            notes.Say(new FeedNote.ConvertedUnits(variable.Name, unit.GetString()!, variable.AskedUnit));
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
                return new(RefusalReason.WrongShape, new FeedFault.NotANumber(variable.Name, place + 1));
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
            notes.Count(new FeedNote.UnknownHours(variable.Name, 1, hour));
            return null;
        }

        double value = convert(raw);
        if (variable.IsPossible(value))
        {
            return value;
        }

        notes.Count(new FeedNote.ImpossibleValues(variable.Name, 1, hour));
        return null;
    }
}
