using System.Globalization;
using System.Text;
using ColdSim.Files;

namespace ColdSim.App.Text.Markup;

/// <summary>Writes elements, attributes and text that a browser reads as HTML and SVG and any reader of XML as XML.</summary>
/// <remarks>
/// Text and attributes may come from files: control codes and hidden characters are made visible and the signs of markup are escaped here, so no
/// caller has to think of it. Only <see cref="Own"/> takes text as it is, and is for constants of the program.
/// </remarks>
internal sealed class MarkupWriter
{
    private readonly StringBuilder _text = new(1 << 16);
    private readonly Stack<string> _open = [];
    private bool _inTag;

    /// <summary>Begins an element; its attributes come next.</summary>
    public MarkupWriter Start(string name)
    {
        CloseTag();
        _text.Append('<').Append(name);
        _open.Push(name);
        _inTag = true;
        return this;
    }

    /// <summary>Begins an element of a class.</summary>
    public MarkupWriter Start(string name, string styleClass) => Start(name).With("class", styleClass);

    /// <summary>Adds an attribute to the element that has just begun.</summary>
    public MarkupWriter With(string name, string value)
    {
        _text.Append(' ').Append(name).Append("=\"");
        Escape(value);
        _text.Append('"');
        return this;
    }

    /// <summary>Adds an attribute that is a number.</summary>
    public MarkupWriter With(string name, double value) => With(name, Number(value));

    /// <summary>Adds text.</summary>
    public MarkupWriter Text(string text)
    {
        CloseTag();
        Escape(text);
        return this;
    }

    /// <summary>Adds a text of the program's own, such as a style sheet, as it is.</summary>
    public MarkupWriter Own(string text)
    {
        CloseTag();
        _text.Append(text);
        return this;
    }

    /// <summary>Ends the element that began last.</summary>
    public MarkupWriter End()
    {
        CloseTag();
        _text.Append("</").Append(_open.Pop()).Append('>');
        return this;
    }

    /// <summary>Ends an element that can have no content, such as a line of a picture.</summary>
    public MarkupWriter Empty()
    {
        _text.Append("/>");
        _inTag = false;
        _open.Pop();
        return this;
    }

    /// <summary>An element with a text.</summary>
    public MarkupWriter Element(string name, string text) => Start(name).Text(text).End();

    /// <summary>Goes on in a new line.</summary>
    public MarkupWriter Line()
    {
        CloseTag();
        _text.Append('\n');
        return this;
    }

    /// <summary>A number as short as it can be, with at most two decimals.</summary>
    public static string Number(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);

    public override string ToString() => _text.ToString();

    private void CloseTag()
    {
        if (_inTag)
            _text.Append('>');
        _inTag = false;
    }

    private void Escape(string text)
    {
        foreach (char c in VisibleText.Of(text))
        {
            _ = c switch
            {
                '&' => _text.Append("&amp;"),
                '<' => _text.Append("&lt;"),
                '>' => _text.Append("&gt;"),
                '"' => _text.Append("&quot;"),
                '\'' => _text.Append("&#39;"),
                _ => _text.Append(c),
            };
        }
    }
}
