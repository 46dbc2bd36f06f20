using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;

namespace WitherAdvisor.Plans.Explaining;

/// <summary>
/// How the plan would differ without each factor: one thing changed and the same hygrometric difference held, so that
/// the hours tell of that thing alone. Without the wanted time the whole search is run again.
/// </summary>
internal static class Effects
{
    private const double ThinnerShare = 0.8;

    /// <summary>A factor that moves the stop by less than this, h, and the air by less than this, K, is not named.</summary>
    private const double Worth = 0.05;

    /// <summary>The effects, and how many beds were simulated for them.</summary>
    public static (IReadOnlyList<FactorEffect> Effects, int Simulated) Of(PlanProblem problem, Candidate chosen, double droughtMoistureChange)
    {
        var effects = new List<FactorEffect>();
        int simulated = 0;
        double mainFrom = chosen.SurfaceEndHour;
        double plenumC = PlenumC(problem, chosen, mainFrom);
        foreach ((string code, PlanProblem without) in Changed(problem, droughtMoistureChange))
        {
            (Candidate? other, int turns, int beds) = Other(problem, without, chosen);
            simulated += beds;
            FactorEffect effect = other is not null
                ? new(code, other.StopHour - chosen.StopHour, PlenumC(without, other, mainFrom) - plenumC, Turns: turns)
                : new(code, null, null);
            if (effect.HoursChange is null || Math.Abs(effect.HoursChange.Value) >= Worth || Math.Abs(effect.PlenumDryBulbChangeK!.Value) >= Worth)
            {
                effects.Add(effect);
            }
        }

        return (effects, simulated);
    }

    private static (Candidate? Plan, int Turns, int Simulated) Other(PlanProblem problem, PlanProblem without, Candidate chosen)
    {
        if (without.ReadyByHour == problem.ReadyByHour)
        {
            var trial = new CandidateTrial(without);
            Candidate sameAir = trial.Try(chosen.Air);
            return Counted(trial, sameAir.HeatedHoursToTarget is null ? null : sameAir);
        }

        PlanSearch search = PlanSearch.Run(without);
        return Counted(search.Trial, search.Best.Broken is null ? search.Best : null);
    }

    private static (Candidate? Plan, int Turns, int Simulated) Counted(CandidateTrial trial, Candidate? plan)
    {
        int turns = plan is null ? 0 : new TurnPlanner(trial, plan).Wanted();
        return (plan, turns, trial.Simulated);
    }

    private static IEnumerable<(string Code, PlanProblem Without)> Changed(PlanProblem problem, double droughtMoistureChange)
    {
        if (problem.Leaf.SurfaceWaterKgPerKg > 0)
        {
            yield return ("without_surface_water", problem.WithoutSurfaceWater());
        }

        if (droughtMoistureChange != 0)
        {
            yield return ("without_drought", problem.HadItBeen(
                of => of with { TissueMoistureWetBasis = of.TissueMoistureWetBasis - droughtMoistureChange }));
        }

        yield return ("at_sea_level", problem with { Ambient = problem.Ambient.AtPressure(StandardAtmosphere.SeaLevelPressurePa) });
        yield return ("if_air_stayed_as_at_loading", problem with { Ambient = problem.Ambient.HeldSteadyFrom(problem.Start.Hour) });
        yield return ("spread_a_fifth_thinner", problem.Spread(ThinnerShare));
        if (problem.Heat.MostKWPerM2 is not null || problem.Heat.Spans is not null)
        {
            yield return ("with_all_the_heat_wanted", problem with { Heat = HeatSupply.Plenty(problem.Heat.HotAirC) });
        }

        if (problem.ReadyByHour is not null)
        {
            yield return ("without_ready_by", problem with { ReadyByHour = null });
        }
    }

    /// <summary>Plenum dry bulb that a candidate's main stage holds at an hour.</summary>
    private static double PlenumC(PlanProblem problem, Candidate candidate, double hour)
    {
        AirState ambient = problem.Ambient.At(hour);
        double ceilingC = problem.WarmestPlenumC(hour, ambient, candidate.Air.FanShare);
        return PlenumSchedule.PlenumForDifference(ambient, candidate.Air.DifferenceK, ceilingC).DryBulbC;
    }
}
