using WitherAdvisor.Api.Recalibration.Running;
using WitherAdvisor.Loft.Adopting;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Recalibrating;
using WitherAdvisor.Loft.Recalibrating.Observing;
using WitherAdvisor.Loft.Recalibrating.Running;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>What recalibration is put together from.</summary>
internal static class RecalibrationSetup
{
    public static void AddRecalibration(this IServiceCollection services)
    {
        services.AddSingleton<IReportForm, ReportForm>();
        services.AddSingleton<LogReading>();
        services.AddSingleton<ProposalMaking>();
        services.AddSingleton<RecalibrationTurns>();
        services.AddHostedService<RecalibrationWorker>();
        services.AddScoped<RecalibrationOrders>();
        services.AddScoped<SetStating>();
        services.AddScoped<SetAdoption>();
        services.AddScoped<LastProposal>();
    }
}
