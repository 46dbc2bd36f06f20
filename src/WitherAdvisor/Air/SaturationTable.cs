namespace WitherAdvisor.Air;

/// <summary>
/// Vapour pressure of saturated air and its slope at one total pressure, read off a table: the bed asks for them
/// a hundred thousand times in one advice.
/// </summary>
/// <remarks>
/// Cubic Hermite interpolation between whole degrees, the pressure within 1e-7 of <see cref="Saturation"/> from 1 to 80 °C,
/// where leaf withers; in the degree below, where ice and water part, within 0.2 %. Temperatures outside −40 to 80 °C
/// are read at the nearer end.
/// </remarks>
public sealed class SaturationTable
{
    private const int LowestC = -40;
    private const int Cells = 120;
    private const double NudgeK = 1e-4;

    private readonly double[] pressuresPa = new double[Cells + 1];
    private readonly double[] slopesPaPerK = new double[Cells + 1];

    public SaturationTable(double pressurePa, MoistAirFormulation formulation)
    {
        for (int i = 0; i <= Cells; i++)
        {
            double t = LowestC + i;
            pressuresPa[i] = Saturation.VapourPressurePa(t, pressurePa, formulation);
            slopesPaPerK[i] =
                (Saturation.VapourPressurePa(t + NudgeK, pressurePa, formulation)
                    - Saturation.VapourPressurePa(t - NudgeK, pressurePa, formulation)) / (2 * NudgeK);
        }
    }

    /// <summary>Vapour pressure of saturated air in Pa at a temperature in °C.</summary>
    public double PressurePa(double temperatureC)
    {
        int i = Cell(temperatureC, out double u);
        double rise = pressuresPa[i + 1] - pressuresPa[i];
        double bend = (slopesPaPerK[i] - rise) * (1 - u) + (rise - slopesPaPerK[i + 1]) * u;
        return pressuresPa[i] + rise * u + u * (1 - u) * bend;
    }

    /// <summary>Slope of the same in Pa/K; within 0.05 % from 1 to 80 °C.</summary>
    public double SlopePaPerK(double temperatureC)
    {
        int i = Cell(temperatureC, out double u);
        return slopesPaPerK[i] + u * (slopesPaPerK[i + 1] - slopesPaPerK[i]);
    }

    private static int Cell(double temperatureC, out double share)
    {
        double place = Math.Clamp(temperatureC - LowestC, 0, Cells - 1e-9);
        int cell = (int)place;
        share = place - cell;
        return cell;
    }
}
