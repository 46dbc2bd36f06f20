using WitherAdvisor.Advice;
using WitherAdvisor.PlanSweep;

string Line(Situation s, AdviceOutcome.Advised a)
{
    var p = a.Plan;
    return $"{s.Climate.Name,-20} load {s.LoadKgPerM2,5:0.0} m {s.Moisture:0.000} s {s.SurfaceWater:0.00} at {s.LoadedHour,4:0.0} old {s.HoursSincePlucking,4:0.0} fan {s.SlowestFan:0.0} kW {s.HeaterKW,4} wish {s.ReadyByHours,4} | HD {p.Stages.FirstOrDefault(x => x.WantedHygrometricDifferenceK is not null)?.WantedHygrometricDifferenceK,5:0.00} fan {p.FanShare:0.00}x{p.RunShare:0.00} ready {p.ReadyHour,5:0.00} stop {p.StopHour,5:0.00} m {100 * a.Curve[^1].MeanMoistureWetBasis:0.0} turns {p.TurnHours.Count} [{string.Join(" ", p.TurnHours.Select(h => h.ToString("0.##")))}] every {p.TurnIntervalHours} spread {100 * p.LargestSpreadWetBasis:0.0} 1more {100 * p.SpreadWithOneMoreTurnWetBasis:0.0} heat {p.HeatKWh,6:0} kWh/kg {p.HeatKWhPerKgMadeTea:0.00} fan {p.FanKWh:0.0} leaf {a.Curve.Max(c => Math.Max(c.BottomLeafC!.Value, c.TopLeafC!.Value)):0.0} hold {p.HeldWellToHour:0.0} sims {a.CandidatesSimulated} broken {string.Join(",", a.Broken.Select(b => $"{b.Limit}:{b.Allowed:0.00}/{b.Reached:0.00}"))} notes {string.Join(",", a.Notices.Select(b => b.Limit))} relief {string.Join(",", a.Reliefs.Select(r => $"{r.Kind}:{r.Amount:0.0}"))}";
}

Climate c(string n) => Climate.All.First(x => x.Name == n);
var list = new List<Situation>();
Situation Base(string n) => new(c(n), 28, 0.775, 0.05, 17, 8, 1, null, null);
if (args[0] == "base")
{
    list.Add(Base("high, rain") with { Moisture = 0.80, SurfaceWater = 0.20 });
    list.Add(Base("hills, dry wind") with { Moisture = 0.74, SurfaceWater = 0 });
    list.Add(Base("hills, ordinary"));
    foreach (var cl in Climate.All) { list.Add(Base(cl.Name)); list.Add(Base(cl.Name) with { SlowestFan = 0.5, LoadedHour = 12 }); list.Add(Base(cl.Name) with { HeaterKW = 20 }); list.Add(Base(cl.Name) with { HeaterKW = 0 }); list.Add(Base(cl.Name) with { HoursSincePlucking = 26 }); }
}
if (args[0] == "wish")
    foreach (var cl in new[] { "hills, ordinary", "hills, dry wind", "high, rain" })
        foreach (var fan in new[] { 1.0, 0.5 })
            for (double w = 6; w <= 24; w += 2) list.Add(Base(cl) with { ReadyByHours = w, SlowestFan = fan });
if (args[0] == "jump")
    foreach (var cl in Climate.All)
        for (double l = 18; l <= 22; l += 0.2) list.Add(Base(cl.Name) with { LoadKgPerM2 = l, Moisture = 0.78, SurfaceWater = 0.1 });
if (args[0] == "none")
{
    foreach (var q in new[] { Base("high, rain") with { Moisture = 0.80, SurfaceWater = 0.20 }, Base("hills, dry wind") with { Moisture = 0.74, SurfaceWater = 0 }, Base("hills, ordinary"), Base("coast, humid"), Base("plains, hot and dry"), Base("mid country"), Base("high, cold and dry"), Base("hills, ordinary") with { LoadKgPerM2 = 15 }, Base("hills, ordinary") with { LoadKgPerM2 = 35 } })
    foreach (int most in new[] { 0, 1, 2, 3, 4, 5, 6, 8 })
    {
        var r = q.Request();
        var a = (AdviceOutcome.Advised)Advisor.Advise(r with { Site = r.Site with { Style = r.Site.Style with { MostTurns = most, ToleratedSpreadWetBasis = 0.001 } } });
        Console.WriteLine($"{q.Climate.Name} {q.LoadKgPerM2} {a.Plan.TurnHours.Count} spread {100 * a.Plan.LargestSpreadWetBasis:0.00} stop {a.Plan.StopHour:0.00} [{string.Join(" ", a.Plan.TurnHours)}]");
    }
    return;
}
foreach (var s in list) Console.WriteLine(Line(s, s.Advise()));
