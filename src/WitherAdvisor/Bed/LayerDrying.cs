using WitherAdvisor.Air;

namespace WitherAdvisor.Bed;

/// <summary>How fast a layer of leaf dries per Pa of vapour-pressure deficit, and how fast the deficit falls in it.</summary>
/// <remarks>Penman (1948) combination equation without radiation, by leaf: E = A·ρ·c·D·g_b/λ over s + γ(1 + g_b/g_l).</remarks>
internal readonly struct LayerDrying
{
    public LayerDrying(
        double leafAreaTimesFilm, double wetFraction, double cuticularResistance,
        double t, double w, double slopePaPerK, double pressurePa)
    {
        double latent = Latent(t);
        double heat = Heat(w);
        double heatOverLatent = heat / latent;
        double psychrometric = pressurePa / MoistAir.MolarMassRatio * heatOverLatent;
        double film = leafAreaTimesFilm * heatOverLatent / MoistAir.SpecificVolumeM3PerKg(t, w, pressurePa);
        SurfacePerDeficit = wetFraction * film / (slopePaPerK + psychrometric);
        TissuePerDeficit = (1 - wetFraction) * film / (slopePaPerK + psychrometric * (1 + cuticularResistance));
        LatentOverHeat = latent / heat;
        double mixing = MoistAir.MolarMassRatio + w;
        DeficitPerGain = slopePaPerK * LatentOverHeat + pressurePa * MoistAir.MolarMassRatio / (mixing * mixing);
    }

    /// <summary>kg per kg dry matter, s and Pa.</summary>
    public double SurfacePerDeficit { get; }

    /// <summary>kg per kg dry matter, s and Pa.</summary>
    public double TissuePerDeficit { get; }

    public double PerDeficit => SurfacePerDeficit + TissuePerDeficit;

    /// <summary>λ/c: what the air cools per vapour taken up, K per (kg/kg dry air).</summary>
    public double LatentOverHeat { get; }

    /// <summary>What the deficit falls per vapour taken up, Pa per (kg/kg dry air): by cooling and by filling.</summary>
    public double DeficitPerGain { get; }

    /// <summary>
    /// Mean deficit in Pa over a layer at whose foot it is <paramref name="deficitPa"/>, falling exponentially; the
    /// layer's dry mass over the flow of dry air in s.
    /// </summary>
    public double MeanDeficit(double deficitPa, double massOverAirS)
    {
        double fall = massOverAirS * PerDeficit * DeficitPerGain;
        return fall < 1e-6 ? deficitPa * (1 - fall / 2) : deficitPa * (1 - Math.Exp(-fall)) / fall;
    }

    /// <summary>λ, J/kg.</summary>
    private static double Latent(double t) => (2501 - 2.361 * t) * 1e3;

    /// <summary>c, J/K per kg of dry air.</summary>
    private static double Heat(double w) => 1006 + 1860 * w;
}
