using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;

namespace WitherAdvisor.Store.Contract;

/// <summary>A store as the use cases see it: empty once initialized, gone once disposed of.</summary>
public interface IStoreUnderTest : IAsyncLifetime
{
    ISiteStore Sites { get; }

    IWeatherStore Weather { get; }

    IFeedLog Feeds { get; }

    IBatchStore Batches { get; }

    IOutcomeStore Outcomes { get; }

    ICoefficientStore Coefficients { get; }

    IRecalibrationStore Recalibrations { get; }

    /// <summary>Ends as a service does that is stopped, and begins again on what was kept.</summary>
    Task Reopen();
}
