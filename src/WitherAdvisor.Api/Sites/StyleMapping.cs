using WitherAdvisor.Fields;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Api.Sites;

/// <summary>A style between the request and the domain.</summary>
internal static class StyleMapping
{
    public static WitherStyle ToDomain(StyleRequest? input)
    {
        WitherStyle named = input?.Name == StyleName.Long ? WitherStyle.Long : WitherStyle.Short;
        return input is null ? named : named with
        {
            WantedHygrometricDifferenceK = input.WantedHygrometricDifferenceK ?? named.WantedHygrometricDifferenceK,
            TargetMoistureWetBasis =
                Percent.ToFraction(input.TargetMoistureWetBasisPercent) ?? named.TargetMoistureWetBasis,
            PlenumCeilingC = input.PlenumCeilingC ?? named.PlenumCeilingC,
            HygrometricDifferenceCeilingK =
                input.HygrometricDifferenceCeilingK ?? named.HygrometricDifferenceCeilingK,
            WetLeafHygrometricDifferenceCeilingK =
                input.WetLeafHygrometricDifferenceCeilingK ?? named.WetLeafHygrometricDifferenceCeilingK,
            ShortestHoursSincePlucking = input.ShortestSincePluckingHours ?? named.ShortestHoursSincePlucking,
            ShortestHoursSincePluckingInDryWindySpell =
                input.ShortestSincePluckingInDryWindySpellHours ?? named.ShortestHoursSincePluckingInDryWindySpell,
            LongestHoursSincePlucking = input.LongestSincePluckingHours ?? named.LongestHoursSincePlucking,
            ToleratedSpreadWetBasis =
                Percent.ToFraction(input.ToleratedSpreadWetBasisPoints) ?? named.ToleratedSpreadWetBasis,
            PlenumMarginK = input.PlenumMarginK ?? named.PlenumMarginK,
            MostTurns = input.MostTurns ?? named.MostTurns,
            TurnFreeLastHours = input.TurnFreeLastHours ?? named.TurnFreeLastHours,
            LeastHoursBetweenTurns = input.LeastHoursBetweenTurns ?? named.LeastHoursBetweenTurns,
            Pace = input.Pace ?? named.Pace,
            CoolingHours = input.CoolingHours ?? named.CoolingHours,
        };
    }

    /// <summary>With every setting stated.</summary>
    public static StyleRequest ToRequest(WitherStyle style) => new()
    {
        Name = style.Name == WitherStyle.Long.Name ? StyleName.Long : StyleName.Short,
        WantedHygrometricDifferenceK = style.WantedHygrometricDifferenceK,
        TargetMoistureWetBasisPercent = Percent.Of(style.TargetMoistureWetBasis),
        PlenumCeilingC = style.PlenumCeilingC,
        HygrometricDifferenceCeilingK = style.HygrometricDifferenceCeilingK,
        WetLeafHygrometricDifferenceCeilingK = style.WetLeafHygrometricDifferenceCeilingK,
        ShortestSincePluckingHours = style.ShortestHoursSincePlucking,
        ShortestSincePluckingInDryWindySpellHours = style.ShortestHoursSincePluckingInDryWindySpell,
        LongestSincePluckingHours = style.LongestHoursSincePlucking,
        ToleratedSpreadWetBasisPoints = Percent.Of(style.ToleratedSpreadWetBasis),
        PlenumMarginK = style.PlenumMarginK,
        MostTurns = style.MostTurns,
        TurnFreeLastHours = style.TurnFreeLastHours,
        LeastHoursBetweenTurns = style.LeastHoursBetweenTurns,
        Pace = style.Pace,
        CoolingHours = style.CoolingHours,
    };
}
