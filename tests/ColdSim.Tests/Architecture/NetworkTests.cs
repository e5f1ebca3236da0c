using Xunit;

namespace ColdSim.Tests.Architecture;

/// <summary>One place asks the network, and one command uses it: a scenario never fetches by itself, and no other command loads what fetches.</summary>
public class NetworkTests
{
    private const string Services = "ColdSim.Files.Weather.Services";

    [Fact]
    public void Only_the_services_use_the_network()
        => Assert.Empty(
            from type in Code.Architecture.Types
            where Code.IsIn(type.Namespace?.FullName ?? "", "ColdSim") && !Code.IsIn(type.Namespace!.FullName, Services)
            from dependency in type.Dependencies
            where IsOfNetwork(dependency.Target.FullName)
            select $"{type.FullName} uses {dependency.Target.FullName}");

    [Fact]
    public void Only_the_forecast_command_uses_the_services()
    {
        string[] users = [.. Code.Uses.Where(u => Code.IsIn(u.ToNamespace, Services) && !Code.IsIn(u.FromNamespace, Services)).Select(u => u.FromType).Distinct()];
        Assert.NotEmpty(users);
        Assert.All(users, u => Assert.StartsWith("Forecast", u, StringComparison.Ordinal));
    }

    [Fact]
    public void The_rule_finds_what_the_services_use()
        => Assert.Contains(
            Code.Architecture.Types.Where(t => Code.IsIn(t.Namespace?.FullName ?? "", Services)).SelectMany(t => t.Dependencies), d => IsOfNetwork(d.Target.FullName));

    private static bool IsOfNetwork(string type) => type.StartsWith("System.Net.", StringComparison.Ordinal) || type.StartsWith("Polly", StringComparison.Ordinal);
}
