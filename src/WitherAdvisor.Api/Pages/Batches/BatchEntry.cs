using WitherAdvisor.Loft;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>Takes in a batch that a person entered, with the air and rain stated beside it.</summary>
internal sealed class BatchEntry(BatchIntake intake, IWeatherStore weather, TimeProvider clock)
{
    /// <summary>The id of the batch; of the one already kept where the same form is sent twice.</summary>
    public async Task<string> Take(string siteId, EnteredBatch entered, CancellationToken cancel)
    {
        await KeepAir(siteId, entered.Air, cancel);
        return await intake.Take(siteId, entered.Trough.Id, entered.Batch, onceOnly: true, cancel) switch
        {
            IntakeResult.Taken taken => taken.Batch.Id,
            IntakeResult.AlreadyThere there => there.Batch.Id,
            var refused => throw new InvalidOperationException($"The form let a batch through that the intake refuses: {refused}."),
        };
    }

    private async Task KeepAir(string siteId, LoftAir air, CancellationToken cancel)
    {
        DateTimeOffset now = clock.NowInMilliseconds();
        if (air.Reading is { } reading)
        {
            await weather.SaveReadings(siteId, WeatherSource.Observed, [reading], now, cancel);
        }

        if (air.RainTotals.Count > 0)
        {
            await weather.SaveRainTotals(siteId, air.RainTotals, now, cancel);
        }
    }
}
