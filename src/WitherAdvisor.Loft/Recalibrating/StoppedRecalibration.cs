using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Loft.Recalibrating;

/// <summary>A recalibration that somebody wanted to stop, as it stands now.</summary>
/// <param name="WasOpen">Whether it waited or ran until then; otherwise it had ended already.</param>
public sealed record StoppedRecalibration(StoredRecalibration Job, bool WasOpen);
