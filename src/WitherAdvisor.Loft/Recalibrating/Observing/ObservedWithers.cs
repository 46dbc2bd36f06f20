using WitherAdvisor.Recalibration;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Loft.Recalibrating.Observing;

/// <summary>A site's outcomes as a recalibration takes them, and those of which too little is kept.</summary>
public sealed record ObservedWithers(IReadOnlyList<ObservedWither> Withers, IReadOnlyList<LeftOut> LeftOut);
