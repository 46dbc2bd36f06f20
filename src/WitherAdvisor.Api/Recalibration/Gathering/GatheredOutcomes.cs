using WitherAdvisor.Recalibration;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Api.Recalibration.Gathering;

/// <summary>A site's outcomes as a recalibration takes them, and those of which too little is kept.</summary>
internal sealed record GatheredOutcomes(IReadOnlyList<ObservedWither> Withers, IReadOnlyList<LeftOut> LeftOut);
