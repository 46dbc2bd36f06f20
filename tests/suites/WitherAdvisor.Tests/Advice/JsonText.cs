using System.Text.Json;

namespace WitherAdvisor.Tests.Advice;

/// <summary>An answer written out to the last digit, to compare it with another. A number that is none cannot be written: it throws.</summary>
internal static class JsonText
{
    public static string Of(object answer) => JsonSerializer.Serialize(answer, answer.GetType());
}
