using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Weather;

/// <summary>Two readings for one instant cannot both be right, so a list with such is refused.</summary>
internal static class RepeatedTimes
{
    public static IEnumerable<FieldError> In(IReadOnlyList<ReadingRequest> readings, string list)
    {
        Dictionary<DateTimeOffset, int> first = [];
        for (int index = 0; index < readings.Count; index++)
        {
            DateTimeOffset time = readings[index].Time;
            if (!first.TryAdd(time, index))
            {
                yield return FieldError.Of(
                    FieldPath.Join(FieldPath.Item(list, index), "time"), $"\"{Rfc3339.Format(time)}\"",
                    $"each time once; {FieldPath.Item(list, first[time])} has it too");
            }
        }
    }
}
