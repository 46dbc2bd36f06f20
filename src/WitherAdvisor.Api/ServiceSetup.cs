using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Demo;
using WitherAdvisor.Api.Feeds;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Http.Doors;
using WitherAdvisor.Api.ModelCard;
using WitherAdvisor.Api.OpenApi;
using WitherAdvisor.Api.Outcomes;
using WitherAdvisor.Api.Outcomes.Export;
using WitherAdvisor.Api.Outcomes.Import;
using WitherAdvisor.Api.Recalibration;
using WitherAdvisor.Api.Simulations;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Api.Weather.Review;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Closing;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.WeatherKeeping;
using WitherAdvisor.Loft.WeatherReviewing;
using WitherAdvisor.Store.Sqlite;
using WitherAdvisor.WeatherFeeds.Client;

namespace WitherAdvisor.Api;

/// <summary>What the service is put together from.</summary>
internal static class ServiceSetup
{
    public static void AddWitherAdvisor(this WebApplicationBuilder builder)
    {
        builder.ListenOnLoopbackUnlessTold();
        builder.LogOnlyWhatMatters();
        builder.Services.AddDoors(builder.Configuration);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddWitherStore(DatabasePath.From(builder.Configuration));
        builder.Services.AddWeatherFeeds(builder.Configuration);
        builder.Services.AddFeedRefresh(builder.Configuration);
        builder.Services.AddScoped<KeptWeather>();
        builder.Services.AddScoped<WeatherEntry>();
        builder.Services.AddScoped<SiteReviews>();
        builder.Services.AddScoped<InputGathering>();
        builder.Services.AddSingleton<IResponseWriter, ResponseWriter>();
        builder.Services.AddScoped<AdviceMaking>();
        builder.Services.AddScoped<AdoptedCoefficients>();
        builder.Services.AddScoped<BatchIntake>();
        builder.Services.AddScoped<LotIntake>();
        builder.Services.AddScoped<BatchClosing>();
        builder.Services.AddOutcomes();
        builder.Services.AddRecalibration();
        builder.Services.AddScoped<InventedEstate>();
        builder.Services.ConfigureHttpJsonOptions(json => JsonRules.Apply(json.SerializerOptions));
        builder.Services.AddApiDocument();
        builder.Services.AddPages();
    }

    public static void UseWitherAdvisor(this WebApplication app)
    {
        app.UseResponseHeaders();
        app.UseStatusProblems();
        app.UseDoors();
        app.MapApiDocument();
        app.MapHealth();
        app.MapV1();
        app.MapPages();
        app.SayThatThereIsNoSignIn();
    }

    private static void MapV1(this WebApplication app)
    {
        RouteGroupBuilder v1 = app.MapGroup("/v1").RefuseUnknownQueries().RefuseBadArguments();
        v1.MapSites();
        v1.MapTroughs();
        v1.MapWeather();
        v1.MapFeeds();
        v1.MapReview();
        v1.MapBatches();
        v1.MapAdvice();
        v1.MapOutcomes();
        v1.MapTasterScales();
        v1.MapOutcomeImport();
        v1.MapOutcomeExport();
        v1.MapRecalibrations();
        v1.MapCoefficientSets();
        v1.MapSimulations();
        v1.MapCoefficients();
        v1.MapModelCard();
        v1.MapBatchSensitivity();
    }
}
