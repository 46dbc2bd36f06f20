namespace WitherAdvisor.Api.Outcomes;

/// <summary>What outcomes are put together from.</summary>
internal static class OutcomeSetup
{
    public static void AddOutcomes(this IServiceCollection services)
    {
        services.AddScoped<OutcomeReading>();
        services.AddScoped<OutcomeEntry>();
        services.AddScoped<Import.LogImport>();
    }
}
