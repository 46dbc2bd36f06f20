using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.LogFiles.Reading;

/// <summary>The outcome that a row of the log tells of.</summary>
internal static class LogOutcomeReading
{
    public static WitherOutcome Read(LogRow row, ICollection<FieldError> errors) => new()
    {
        AirSet = Air("air_set", errors,
            row.AirSetFromHours, row.AirSetDryBulbC, row.AirSetWetBulbC, row.AirSetHygrometricDifferenceK, row.AirSetFanSharePercent),
        AirMeasured = Air("air_measured", errors,
            row.AirMeasuredFromHours, row.AirMeasuredDryBulbC, row.AirMeasuredWetBulbC, row.AirMeasuredHygrometricDifferenceK,
            row.AirMeasuredFanSharePercent),
        Turns = row.Turns,
        TurnedAtHours = [.. LogLists.ReadNumbers(row.TurnedAtHours, "turned_at_hours", errors).OfType<double>()],
        WitheredWeightKg = row.WitheredWeightKg,
        OvenMoistureWetBasis = Percent.ToFraction(row.OvenMoistureWetBasisPercent),
        Layers = new(
            Percent.ToFraction(row.BottomMoistureWetBasisPercent),
            Percent.ToFraction(row.MiddleMoistureWetBasisPercent),
            Percent.ToFraction(row.TopMoistureWetBasisPercent)),
        SampleWeighings = Samples(row, errors),
        Verdict = row.Verdict,
        Evenness = row.Evenness,
        Marks = LogLists.ReadMarks(row.Marks, errors),
        Faults = LogLists.ReadTexts(row.Faults),
        Weather = row.Weather,
        Note = row.Note,
    };

    private static List<AirHeld> Air(string which, ICollection<FieldError> errors, params string?[] cells)
    {
        string[] columns = ["from_hours", "dry_bulb_c", "wet_bulb_c", "hygrometric_difference_k", "fan_share_percent"];
        IReadOnlyList<double?>[] lists =
            [.. cells.Zip(columns, (cell, column) => LogLists.ReadNumbers(cell, $"{which}_{column}", errors))];
        int count = lists.Max(list => list.Count);
        foreach ((int index, IReadOnlyList<double?> list) in lists.Index())
        {
            bool isLoneHour = index == 0 && count == 1;
            if (list.Count != count && (index == 0 ? !isLoneHour : list.Count > 0))
            {
                errors.Add(FieldError.Of($"{which}_{columns[index]}", $"{list.Count} values", $"{count} values, as many as there are hours"));
                return [];
            }
        }

        double? At(int list, int index) => index < lists[list].Count ? lists[list][index] : null;
        return
        [
            .. Enumerable.Range(0, count).Select(index => new AirHeld(
                At(0, index) ?? 0, At(1, index), At(2, index), At(3, index), Percent.ToFraction(At(4, index)))),
        ];
    }

    private static List<SampleWeighing> Samples(LogRow row, ICollection<FieldError> errors)
    {
        IReadOnlyList<double?> hours = LogLists.ReadNumbers(row.SampleHours, "sample_hours", errors);
        IReadOnlyList<double?> weights = LogLists.ReadNumbers(row.SampleWeightPercent, "sample_weight_percent", errors);
        if (hours.Count != weights.Count || hours.Concat(weights).Any(value => value is null))
        {
            errors.Add(FieldError.Of("sample_hours", $"{row.SampleHours}", "as many hours as there are in sample_weight_percent, none left out"));
            return [];
        }

        return [.. hours.Zip(weights, (hour, weight) => new SampleWeighing(hour!.Value, Percent.ToFraction(weight!.Value)))];
    }
}
