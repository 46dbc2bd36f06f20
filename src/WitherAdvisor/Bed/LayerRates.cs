namespace WitherAdvisor.Bed;

/// <summary>What each layer loses at an instant, and the air that comes out on top.</summary>
internal sealed class LayerRates(int layers, bool leafTemperatures = false)
{
    /// <summary>Temperature of the dry part of each layer's leaf, °C; null where nobody asks for it.</summary>
    public double[]? LeafC { get; } = leafTemperatures ? new double[layers] : null;

    /// <summary>Loss of water in the leaf, kg per kg dry matter and s.</summary>
    public double[] Tissue { get; } = new double[layers];

    /// <summary>Loss of water on the leaf, kg per kg dry matter and s.</summary>
    public double[] Surface { get; } = new double[layers];

    public double ExhaustC { get; set; }

    public double ExhaustHumidityRatio { get; set; }

    public double DryAirKgPerSM2 { get; set; }
}
