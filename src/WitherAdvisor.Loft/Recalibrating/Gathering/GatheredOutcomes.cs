using WitherAdvisor.Recalibration;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Loft.Recalibrating.Gathering;

/// <summary>A site's outcomes as a recalibration takes them, and those of which too little is kept.</summary>
public sealed record GatheredOutcomes(IReadOnlyList<ObservedWither> Withers, IReadOnlyList<LeftOut> LeftOut);
