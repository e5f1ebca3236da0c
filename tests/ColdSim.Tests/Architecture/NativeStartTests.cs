using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using ColdSim.Tests.Files;
using Terminal.Gui.App;
using Xunit;

namespace ColdSim.Tests.Architecture;

public class NativeStartTests
{
    [Fact]
    public void A_native_program_leaves_out_all_of_the_toolkits_start_code()
    {
        const BindingFlags statics = BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly;
        string[] start =
        [
            .. typeof(Application).Assembly.GetTypes().SelectMany(t => t.GetMethods(statics))
                .Where(m => m.IsDefined(typeof(ModuleInitializerAttribute))).Select(m => $"{m.DeclaringType!.FullName} {m.ReturnType.FullName} {m.Name}()"),
        ];
        XElement left = XDocument.Load(Path.Combine(DocPage.Source, "ColdSim.App", "NativeStart.xml")).Root!.Element("assembly")!;
        Assert.Equal(typeof(Application).Assembly.GetName().Name, left.Attribute("fullname")!.Value);
        Assert.NotEmpty(start);
        Assert.Equal(start, left.Elements("type").SelectMany(t => t.Elements("method").Select(m => $"{t.Attribute("fullname")!.Value} {m.Attribute("signature")!.Value}")));
    }
}
