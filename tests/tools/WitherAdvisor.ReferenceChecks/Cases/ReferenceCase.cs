namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>One value that somebody else got for stated inputs.</summary>
/// <param name="Quantity">What it is, with its unit in the name.</param>
/// <param name="Label">The inputs as the table shows them.</param>
/// <param name="Inputs">What it was worked out for.</param>
/// <param name="Printed">The value as its file has it.</param>
/// <param name="Expected">The same as a number.</param>
/// <param name="Tolerance">How near ours must come.</param>
/// <param name="Source">Whose value it is.</param>
public sealed record ReferenceCase(
    string Quantity, string Label, Inputs Inputs, string Printed, double Expected, Tolerance Tolerance, string Source);
