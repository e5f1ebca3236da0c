using Xunit;

namespace ColdSim.Tests.Architecture;

/// <summary>Inside a project no namespace uses one that uses it, directly or through others.</summary>
/// <remarks>
/// A folder counts with the folders in it as one. A type at a project's root counts for itself, so that <c>Rig</c> may know all its parts and
/// none of them may know <c>Rig</c>. Planning's root counts as one: <c>Scenario</c> and all that it is made of, on which every kind of question
/// builds.
/// </remarks>
public class CycleTests
{
    [Theory]
    [InlineData("ColdSim.Physics")]
    [InlineData("ColdSim.Model")]
    [InlineData("ColdSim.Planning")]
    [InlineData("ColdSim.Files")]
    public void Namespaces_of_a_project_form_no_cycle(string project)
    {
        Dictionary<string, Dictionary<string, List<Use>>> graph = Graph(project);
        string[] inCycles =
        [
            .. from one in graph
               from other in one.Value
               where Reaches(graph, other.Key, one.Key)
               orderby one.Key, other.Key
               select $"{one.Key} uses {other.Key}: {string.Join(", ", other.Value.Select(u => u.ToString()).Distinct().Order(StringComparer.Ordinal).Take(8))}",
        ];
        Assert.True(inCycles.Length == 0, $"{project} has cycles:\n{string.Join('\n', inCycles)}");
    }

    private static Dictionary<string, Dictionary<string, List<Use>>> Graph(string project)
    {
        Dictionary<string, Dictionary<string, List<Use>>> graph = [];
        foreach (Use use in Code.Uses)
        {
            string? one = Node(project, use.FromNamespace, use.FromType), other = Node(project, use.ToNamespace, use.ToType);
            if (one is null || other is null || one == other)
                continue;
            if (!graph.TryGetValue(one, out Dictionary<string, List<Use>>? others))
                graph.Add(one, others = []);
            if (!others.TryGetValue(other, out List<Use>? uses))
                others.Add(other, uses = []);
            uses.Add(use);
        }

        return graph;
    }

    // The part of a project that a type belongs to; none outside it. A using of the root is no use of any one of its types.
    private static string? Node(string project, string name, string type)
    {
        if (name == project)
            return project == "ColdSim.Planning" ? project : type.Contains(' ', StringComparison.Ordinal) ? null : $"{project}.{Path.GetFileNameWithoutExtension(type)}";
        return Code.IsIn(name, project) ? $"{project}.{name[(project.Length + 1)..].Split('.')[0]}" : null;
    }

    private static bool Reaches(Dictionary<string, Dictionary<string, List<Use>>> graph, string from, string to)
    {
        HashSet<string> seen = [from];
        Queue<string> ahead = new([from]);
        while (ahead.TryDequeue(out string? next))
        {
            if (next == to)
                return true;
            foreach (string other in graph.GetValueOrDefault(next)?.Keys ?? Enumerable.Empty<string>())
            {
                if (seen.Add(other))
                    ahead.Enqueue(other);
            }
        }

        return false;
    }
}
