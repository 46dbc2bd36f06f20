namespace WitherAdvisor.Bed;

/// <summary>Cuts a bed that leaf was laid on into as many layers of equal dry mass as before.</summary>
internal static class LayerCut
{
    /// <summary>What each layer holds per dry matter then; nothing is lost or gained.</summary>
    /// <param name="layers">What the layers hold that lay there, per dry matter, from the mesh up.</param>
    /// <param name="lyingShare">Of all dry mass, the share that lay there.</param>
    /// <param name="laid">What the leaf laid on top holds, per dry matter.</param>
    public static void LayOn(double[] layers, double lyingShare, double laid)
    {
        double[] lying = [.. layers];
        for (int i = 0; i < layers.Length; i++)
        {
            double from = (double)i / layers.Length;
            double to = (i + 1.0) / layers.Length;
            double under = Math.Clamp((lyingShare - from) / (to - from), 0, 1);
            layers[i] = under * Mean(lying, from / lyingShare, Math.Min(to / lyingShare, 1)) + (1 - under) * laid;
        }
    }

    /// <summary>Mean over a stretch of height, in shares of the bed from the mesh; 0 where there is none.</summary>
    private static double Mean(double[] layers, double from, double to)
    {
        double sum = 0;
        double bottom = from * layers.Length;
        double top = to * layers.Length;
        for (int i = (int)bottom; i < layers.Length && i < top; i++)
        {
            sum += layers[i] * Math.Max(Math.Min(i + 1, top) - Math.Max(i, bottom), 0);
        }

        return top > bottom ? sum / (top - bottom) : 0;
    }
}
