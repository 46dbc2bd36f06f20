using WitherAdvisor.Api.Pages;
using WitherAdvisor.Api.Pages.Advice;
using WitherAdvisor.Api.Pages.Batches;
using WitherAdvisor.Api.Pages.Calibration;
using WitherAdvisor.Api.Pages.Closing;
using WitherAdvisor.Api.Pages.Home;
using WitherAdvisor.Api.Pages.Log;
using WitherAdvisor.Api.Pages.Lots;
using WitherAdvisor.Api.Pages.Model;
using WitherAdvisor.Api.Pages.Outcomes;
using WitherAdvisor.Api.Pages.Readings;
using WitherAdvisor.Api.Pages.Season;
using WitherAdvisor.Api.Pages.Sheet;
using WitherAdvisor.Api.Pages.Upload;
using WitherAdvisor.Api.Pages.Weather;

namespace WitherAdvisor.Api;

/// <summary>The pages: what they need and where they are found.</summary>
internal static class PageRoutes
{
    public static void AddPages(this IServiceCollection services)
    {
        services.AddRazorComponents();
        services.AddAntiforgery(options => options.Cookie.Name = "form");
        services.AddLanguages();
        services.AddScoped<OnHand>();
        services.AddScoped<BatchEntry>();
        services.AddScoped<AdviceViewing>();
    }

    public static void MapPages(this WebApplication app)
    {
        RouteGroupBuilder pages = app.MapGroup("").ExcludeFromDescription().AddEndpointFilter(PageHeaders.Set);
        pages.MapGet("/", HomeEndpoints.Show);
        pages.MapGet("/sites/{site}/batches/new", NewBatchEndpoints.Show);
        pages.MapPost("/sites/{site}/batches/new", NewBatchEndpoints.Enter);
        pages.MapGet("/sites/{site}/weather", WeatherPageEndpoints.Show);
        pages.MapGet("/sites/{site}/weather/new", NewReadingEndpoints.Show);
        pages.MapPost("/sites/{site}/weather/new", NewReadingEndpoints.Enter);
        pages.MapGet("/sites/{site}/weather/upload", UploadEndpoints.Show);
        pages.MapPost("/sites/{site}/weather/upload", UploadEndpoints.Enter);
        pages.MapGet("/batches/{batch}", AdvicePageEndpoints.Show);
        pages.MapPost("/batches/{batch}/advice", AdvicePageEndpoints.AdviseAgain);
        pages.MapPost("/batches/{batch}/lots", LotEndpoints.Add);
        pages.MapPost("/batches/{batch}/unload", AdvicePageEndpoints.Unload);
        pages.MapPost("/batches/{batch}/unloaded", ClosingEndpoints.Unload);
        pages.MapPost("/batches/{batch}/cancelled", ClosingEndpoints.Cancel);
        pages.MapPost("/batches/{batch}/mixed", ClosingEndpoints.Mix);
        pages.MapGet("/batches/{batch}/outcome", OutcomePageEndpoints.Show);
        pages.MapPost("/batches/{batch}/outcome", OutcomePageEndpoints.Enter);
        pages.MapGet("/sites/{site}/outcomes", LogEndpoints.Show);
        pages.MapGet("/sites/{site}/outcomes/import", ImportPageEndpoints.Show);
        pages.MapPost("/sites/{site}/outcomes/import", ImportPageEndpoints.Enter);
        pages.MapGet("/sites/{site}/calibration", CalibrationEndpoints.Show);
        pages.MapPost("/sites/{site}/calibration/recalibrate", CalibrationEndpoints.Recalibrate);
        pages.MapPost("/sites/{site}/calibration/cancel", CalibrationEndpoints.Cancel);
        pages.MapPost("/sites/{site}/calibration/adopt", CalibrationEndpoints.Adopt);
        pages.MapGet("/sites/{site}/season", SeasonEndpoints.Show);
        pages.MapGet(ModelPageEndpoints.Address, ModelPageEndpoints.Show);
        app.MapGet(StyleSheet.Address, StyleSheet.Show).ExcludeFromDescription();
    }
}
