using WitherAdvisor.Advice;

namespace WitherAdvisor.Loft.Advising;

/// <summary>Version of the pure library, which every advice names.</summary>
public static class ModelVersion
{
    public static string Current { get; } = typeof(Advisor).Assembly.GetName().Version!.ToString(3);
}
