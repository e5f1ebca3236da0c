namespace ColdSim.Planning.Diagnosis;

/// <summary>Bayes' rule over the causes: priors times likelihoods, the signs independent of each other once the cause is known.</summary>
internal static class Posterior
{
    /// <summary>Every cause, in the order in which probabilities are kept.</summary>
    public static readonly Cause[] Causes = Enum.GetValues<Cause>();

    /// <summary>The probability of each cause.</summary>
    public static double[] Of(DiagnosisQuestion question, CylinderLikelihood cylinder)
    {
        double[] faults = cylinder.Of(question.Readings);
        double[] p = new double[Causes.Length];
        for (int i = 0; i < p.Length; i++)
        {
            Cause cause = Causes[i];
            p[i] = LikelihoodTable.Prior(cause) * faults[(int)CylinderLikelihood.FaultOf(cause)];
            foreach ((Sign sign, int state) in question.Counted)
                p[i] *= LikelihoodTable.Likelihood(sign, state, cause);
        }

        Normalize(p);
        return p;
    }

    /// <summary>The information in knowing which of the causes it is. [bit]</summary>
    public static double Entropy_bit(double[] p)
    {
        double sum = 0;
        foreach (double x in p)
        {
            if (x > 0) sum -= x * Math.Log2(x);
        }

        return sum;
    }

    /// <summary>Makes the parts add up to 1.</summary>
    public static void Normalize(double[] p)
    {
        double sum = p.Sum();
        for (int i = 0; i < p.Length; i++)
            p[i] /= sum;
    }
}
