using WitherAdvisor.Leaf;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>A value put together from named pieces, so that they add up to it.</summary>
internal sealed class Pieces
{
    private readonly List<Contribution> contributions = [];

    public double Sum { get; private set; }

    /// <summary>Adds a piece; one of nothing is not worth a name.</summary>
    public Pieces Add(string code, double amount)
    {
        if (amount != 0)
        {
            contributions.Add(new(code, amount));
            Sum += amount;
        }

        return this;
    }

    /// <summary>Brings the sum within bounds by a piece of its own.</summary>
    public Pieces HoldWithin(double low, double high) => Add("held", Math.Clamp(Sum, low, high) - Sum);

    public Estimate ToEstimate(double standardDeviation, EstimateOrigin origin) =>
        new(Sum, standardDeviation, origin, contributions);
}
