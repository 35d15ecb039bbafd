using System.Globalization;
using System.Xml.XPath;
using System.Xml.Xsl;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>A Schematron rule of R4: what has to hold of every node of a context. HL7 writes them for XPath 2; the few functions they need are added here.</summary>
internal sealed class SchematronRule
{
    private readonly XPathExpression? _context;
    private readonly XPathExpression? _test;

    public SchematronRule(string context, string test, string says)
    {
        (Context, Test, Says) = (context, test, says);
        try
        {
            _context = XPathExpression.Compile("//" + context, new Functions(null));
            _test = IsNewer(test) ? null : XPathExpression.Compile(Comparable(test), new Functions(null));
        }
        catch (XPathException)
        {
            _test = null;
        }
    }

    public string Context { get; }

    public string Test { get; }

    /// <summary>The id of the invariant and its words.</summary>
    public string Says { get; }

    /// <summary>Whether .NET can read it.</summary>
    public bool IsReadable => _context is not null && _test is not null;

    /// <summary>Whether its context can be in a document with these elements; saves looking for what is not there.</summary>
    public bool IsAbout(IReadOnlySet<string> elements) => Context.Split('/')[^1] is var last && (!last.StartsWith("f:", StringComparison.Ordinal) || last == "f:*" || elements.Contains(last["f:".Length..]));

    /// <summary>Its words, once for each node of which it does not hold.</summary>
    public IEnumerable<string> Broken(XPathNavigator root)
    {
        foreach (XPathNavigator node in root.Select(_context!).Cast<XPathNavigator>().Select(found => found.Clone()))
        {
            XPathExpression test = _test!;
            if (Test.Contains("current()", StringComparison.Ordinal))
            {
                test = test.Clone();
                test.SetContext(new Functions(node));
            }

            bool holds = node.Evaluate(test) switch { bool truth => truth, XPathNodeIterator found => found.MoveNext(), double number => number != 0, string text => text.Length > 0, _ => false };
            if (!holds)
            {
                yield return $"{Says} ({Context})";
            }
        }
    }

    // Loops and lists of values are newer than .NET's XPath; what they say of our bundles is checked by tests of our own.
    private static bool IsNewer(string test) => test.Contains("for $", StringComparison.Ordinal) || test.Contains("=('", StringComparison.Ordinal);

    // Two texts are compared as texts in XPath 2 and as numbers in XPath 1.
    private static string Comparable(string test) =>
        test.Replace("f:lastModified/@value >= f:authoredOn/@value", "xs:dateTime(f:lastModified/@value) >= xs:dateTime(f:authoredOn/@value)", StringComparison.Ordinal);

    private sealed class Functions : XsltContext
    {
        private readonly XPathNavigator? _current;

        public Functions(XPathNavigator? current)
        {
            _current = current;
            AddNamespace("f", FhirXml.Fhir.NamespaceName);
            AddNamespace("h", "http://www.w3.org/1999/xhtml");
            AddNamespace("xs", "http://www.w3.org/2001/XMLSchema");
        }

        public override bool Whitespace => true;

        public override int CompareDocument(string baseUri, string nextbaseUri) => 0;

        public override bool PreserveWhitespace(XPathNavigator node) => true;

        public override IXsltContextVariable ResolveVariable(string prefix, string name) => throw new XPathException($"No variable {name}.");

        public override IXsltContextFunction ResolveFunction(string prefix, string name, XPathResultType[] ArgTypes) => name switch
        {
            "exists" => new Function(1, XPathResultType.Boolean, args => ((XPathNodeIterator)args[0]).Clone().MoveNext()),
            "current" => new Function(0, XPathResultType.NodeSet, _ => _current!.Select(".")),
            "dateTime" => new Function(1, XPathResultType.Number, args => Moment(args[0])),
            _ => throw new XPathException($"No function {name}."),
        };

        private static double Moment(object value)
        {
            string text = value is XPathNodeIterator nodes ? (nodes = nodes.Clone()).MoveNext() ? nodes.Current!.Value : "" : value.ToString()!;
            return DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset moment) ? moment.ToUnixTimeMilliseconds() : double.NaN;
        }
    }

    private sealed class Function(int count, XPathResultType result, Func<object[], object> call) : IXsltContextFunction
    {
        public int Minargs => count;

        public int Maxargs => count;

        public XPathResultType ReturnType => result;

        public XPathResultType[] ArgTypes => [.. Enumerable.Repeat(XPathResultType.Any, count)];

        public object Invoke(XsltContext xsltContext, object[] args, XPathNavigator docContext) => call(args);
    }
}
