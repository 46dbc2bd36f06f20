using WitherAdvisor.Api.Recalibration.Adopting;
using WitherAdvisor.Api.Recalibration.Gathering;
using WitherAdvisor.Api.Recalibration.Running;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>What recalibration is put together from.</summary>
internal static class RecalibrationSetup
{
    public static void AddRecalibration(this IServiceCollection services)
    {
        services.AddSingleton<LogGathering>();
        services.AddSingleton<ProposalMaking>();
        services.AddSingleton<RecalibrationTurns>();
        services.AddHostedService<RecalibrationWorker>();
        services.AddScoped<RecalibrationOrders>();
        services.AddScoped<SetAdoption>();
        services.AddScoped<LastProposal>();
    }
}
