using ColdSim.Planning.Diagnosis;
using Xunit;

namespace ColdSim.Tests.Planning.Diagnosis;

public class DiagnosisCaseTests
{
    [Fact]
    public void There_are_forty_cases_of_every_cause_and_a_third_has_a_misleading_sign()
    {
        Assert.Equal(40, DiagnosisCase.All.Count);
        Assert.Equal(Enum.GetValues<Cause>().Length - 1, DiagnosisCase.All.Select(c => c.Cause).Distinct().Count());
        Assert.InRange(DiagnosisCase.All.Count(c => c.Misleading.Length > 0), 13, 40);
        Assert.All(DiagnosisCase.All, c => Assert.True(c.Misleading.Length == 0 || c.Signs.ContainsKey(c.Misleading), c.Story));
    }

    [Fact]
    public void At_least_thirty_six_of_them_have_their_cause_first_and_all_within_three()
    {
        (DiagnosisCase Case, int Place)[] places = [.. DiagnosisCase.All.Select(c => (c, c.Place()))];
        string off = string.Join('\n', places.Where(p => p.Place != 1).Select(p => $"{p.Place} {p.Case.Cause}: {p.Case.Story}"));
        Assert.True(places.Count(p => p.Place == 1) >= 36, off);
        Assert.True(places.All(p => p.Place is >= 1 and <= 3), off);
    }
}
