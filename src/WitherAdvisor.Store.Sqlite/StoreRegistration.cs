using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Puts the store into a host.</summary>
public static class StoreRegistration
{
    /// <summary>
    /// Keeps everything in one SQLite file. It is made or brought up to date when the first of the stores is asked for,
    /// never at registration: tools that only build the host must leave no file behind.
    /// </summary>
    public static IServiceCollection AddWitherStore(this IServiceCollection services, string databasePath) => services
        .AddSingleton(provider => SqliteDatabase.Open(databasePath, provider.GetService<ILogger<SqliteDatabase>>()))
        .AddSingleton<ISiteStore, SqliteSites>()
        .AddSingleton<IWeatherStore, SqliteWeather>()
        .AddSingleton<IFeedLog, SqliteFeedLog>()
        .AddSingleton<IBatchStore, SqliteBatches>()
        .AddSingleton<IOutcomeStore, SqliteOutcomes>()
        .AddSingleton<ICoefficientStore, SqliteCoefficients>()
        .AddSingleton<IRecalibrationStore, SqliteRecalibrations>();
}
