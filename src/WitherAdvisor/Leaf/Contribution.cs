namespace WitherAdvisor.Leaf;

/// <summary>A piece of an estimate.</summary>
/// <param name="Code">snake_case name of the piece, for example "rain" or "dew".</param>
/// <param name="Amount">In the unit of the estimate; pieces add up to its value.</param>
public sealed record Contribution(string Code, double Amount);
