using WitherAdvisor.Loft.Exporting;
using WitherAdvisor.Loft.Importing;
using WitherAdvisor.Loft.Outcomes;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>What outcomes are put together from.</summary>
internal static class OutcomeSetup
{
    public static void AddOutcomes(this IServiceCollection services)
    {
        services.AddScoped<OutcomeReading>();
        services.AddScoped<OutcomeEntry>();
        services.AddScoped<LogImport>();
        services.AddScoped<CsvImport>();
        services.AddScoped<LogExport>();
    }
}
