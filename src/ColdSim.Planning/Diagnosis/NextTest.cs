namespace ColdSim.Planning.Diagnosis;

/// <summary>Something that can be looked at next, and what it is worth.</summary>
/// <param name="Sign">The sign to look at; null for a reading.</param>
/// <param name="Reading">The reading to take; null for a sign.</param>
/// <param name="Information_bit">What it tells on average of which cause it is. [bit]</param>
/// <param name="Cost_min">What it costs in time and trouble, as minutes; common practice, no source. [min]</param>
public sealed record NextTest(Sign? Sign, Reading? Reading, double Information_bit, double Cost_min)
{
    // Less is not worth going out for.
    private const double Least_bit = 0.02;

    private static readonly double[] Lefts_frac = [0, 0.1, 0.25, 0.5, 0.75, 1, 1.1];
    private static readonly double[] Lines_frac = [0, 0.15, 0.35, 0.6, 0.8];
    private static readonly double[] Pressures_Pa = [3e3, 14e3, 28e3, 48e3, 83e3, 140e3, 240e3, 410e3, 690e3];

    /// <summary>What is worth a look, the most for its cost first.</summary>
    /// <param name="question">What is known.</param>
    /// <param name="cylinder">The model.</param>
    /// <param name="between">The probability of each cause that is to be told apart; 0 leaves one out.</param>
    internal static IReadOnlyList<NextTest> Of(DiagnosisQuestion question, CylinderLikelihood cylinder, double[] between)
    {
        List<NextTest> tests = [];
        foreach (Sign sign in Enum.GetValues<Sign>())
        {
            if (question.Signs.ContainsKey(sign)) continue;
            double bit = Expected_bit(between, SignStates.Of(sign).Count,
                (state, i) => LikelihoodTable.Likelihood(sign, state, Posterior.Causes[i]));
            tests.Add(new(sign, null, bit, Cost(sign)));
        }

        foreach (Reading reading in Enum.GetValues<Reading>())
        {
            if (question.Readings.Has(reading)) continue;
            double[] known = cylinder.Of(question.Readings);
            double[][] read = [.. Outcomes(reading, cylinder).Select(o => cylinder.Of(question.Readings.With(reading, o)))];
            double bit = Expected_bit(between, read.Length, (state, i) => Likelihood(read, known, state, Posterior.Causes[i]));
            tests.Add(new(null, reading, bit, Cost(reading)));
        }

        return [.. tests.Where(t => t.Information_bit >= Least_bit).OrderByDescending(t => t.Information_bit / t.Cost_min)];
    }

    // Outcomes are samples of a range, so that their likelihoods are brought to a sum of 1.
    private static double Likelihood(double[][] read, double[] known, int state, Cause cause)
    {
        int fault = (int)CylinderLikelihood.FaultOf(cause);
        double sum = read.Sum(r => r[fault]);
        return sum > 0 && known[fault] > 0 ? read[state][fault] / sum : 1.0 / read.Length;
    }

    private static double Expected_bit(double[] p, int states, Func<int, int, double> likelihood)
    {
        double before = Posterior.Entropy_bit(p), after = 0;
        double[] then = new double[p.Length];
        for (int state = 0; state < states; state++)
        {
            double sum = 0;
            for (int i = 0; i < p.Length; i++)
            {
                then[i] = p[i] == 0 ? 0 : p[i] * likelihood(state, i);
                sum += then[i];
            }

            if (sum <= 0) continue;
            Posterior.Normalize(then);
            after += sum * Posterior.Entropy_bit(then);
        }

        return Math.Max(0, before - after);
    }

    private static IEnumerable<CylinderReadings> Outcomes(Reading reading, CylinderLikelihood cylinder) => reading switch
    {
        Diagnosis.Reading.Left => Lefts_frac.Select(f => new CylinderReadings { Left_frac = f }),
        Diagnosis.Reading.Pressure => Pressures_Pa.Select(p => new CylinderReadings { Pressure_Pa = p }),
        Diagnosis.Reading.Wall => Enum.GetValues<WallFeel>().Select(w => new CylinderReadings { WallFeel = w }),
        _ => Lines_frac.Select(f => new CylinderReadings { FrostLine_m = f * cylinder.Model.Height_m }),
    };

    private static double Cost(Sign sign) => sign switch
    {
        Diagnosis.Sign.OpenedFast or Diagnosis.Sign.Swapped or Diagnosis.Sign.Filled or Diagnosis.Sign.Gas or Diagnosis.Sign.Elevation => 0.5,
        Diagnosis.Sign.Stove or Diagnosis.Sign.Fan => 1,
        Diagnosis.Sign.Furnace or Diagnosis.Sign.Reset or Diagnosis.Sign.Return or Diagnosis.Sign.ByDay => 2,
        Diagnosis.Sign.Vents or Diagnosis.Sign.Regulator or Diagnosis.Sign.Volts or Diagnosis.Sign.Load => 3,
        _ => 8,
    };

    private static double Cost(Reading reading) => reading switch
    {
        Diagnosis.Reading.Wall or Diagnosis.Reading.FrostLine => 3,
        Diagnosis.Reading.Left => 10,
        _ => 12,
    };
}
