namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>One number that was found of a wither.</summary>
/// <param name="Kind">What it is of.</param>
/// <param name="Value">As the fit sees it.</param>
/// <param name="Error">Its standard deviation.</param>
/// <param name="Hour">Hours from loading.</param>
internal readonly record struct Observation(ObservationKind Kind, double Value, double Error, double Hour);
