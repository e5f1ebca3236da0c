namespace ColdSim.App.Screens.Pages;

/// <summary>A line of text while it is typed.</summary>
internal static class TextEdit
{
    /// <summary>The text without its last character, which may be two units of UTF-16.</summary>
    public static string WithoutLast(string text) => text.Length == 0 ? text : text[..^(char.IsLowSurrogate(text[^1]) && text.Length > 1 ? 2 : 1)];
}
