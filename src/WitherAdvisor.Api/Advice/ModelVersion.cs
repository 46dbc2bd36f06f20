using WitherAdvisor.Advice;

namespace WitherAdvisor.Api.Advice;

/// <summary>Version of the pure library, which every advice names.</summary>
internal static class ModelVersion
{
    public static string Current { get; } = typeof(Advisor).Assembly.GetName().Version!.ToString(3);
}
