using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Rostrum.Rulings.Tests.Schemas;

/// <summary>Reads a text as an editor does that knows only YAML: numbers, truths and nothing are told from texts by their looks.</summary>
/// <param name="events">What YamlDotNet sees.</param>
/// <param name="isOld">True to read as YAML 1.1 does, where <c>yes</c> and <c>no</c> are truths too.</param>
internal sealed partial class PlainYaml(IParser events, bool isOld)
{
    /// <summary>The value; null where the text is no YAML, so that an editor's own reader tells what is wrong before any schema is asked.</summary>
    public static JsonNode? Read(string content, bool isOld = false)
    {
        try
        {
            IParser events = new Parser(new StringReader(content));
            events.Consume<StreamStart>();
            events.Consume<DocumentStart>();
            return new PlainYaml(events, isOld).Value();
        }
        catch (YamlException)
        {
            return null;
        }
    }

    private JsonNode? Value()
    {
        if (events.Accept<Scalar>(out _))
        {
            var scalar = events.Consume<Scalar>();
            return scalar.Style == ScalarStyle.Plain ? Plain(scalar.Value) : scalar.Value;
        }

        if (events.TryConsume<SequenceStart>(out _))
        {
            var list = new JsonArray();
            while (!events.TryConsume<SequenceEnd>(out _))
            {
                list.Add(Value());
            }

            return list;
        }

        events.Consume<MappingStart>();
        var mapping = new JsonObject();
        while (!events.TryConsume<MappingEnd>(out _))
        {
            string key = events.Consume<Scalar>().Value;
            mapping[key] = Value();
        }

        return mapping;
    }

    // The core schema of YAML 1.2, https://yaml.org/spec/1.2.2/#1032-tag-resolution; truths of 1.1 from https://yaml.org/type/bool.html.
    private JsonNode? Plain(string text) => text switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => true,
        "false" or "False" or "FALSE" => false,
        "yes" or "Yes" or "YES" or "on" or "On" or "ON" or "y" or "Y" when isOld => true,
        "no" or "No" or "NO" or "off" or "Off" or "OFF" or "n" or "N" when isOld => false,
        _ when Whole().IsMatch(text) => long.Parse(text, CultureInfo.InvariantCulture),
        _ when Fraction().IsMatch(text) => double.Parse(text, CultureInfo.InvariantCulture),
        _ => text,
    };

    [GeneratedRegex(@"^[-+]?[0-9]{1,15}$")]
    private static partial Regex Whole();

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]{1,2})?$")]
    private static partial Regex Fraction();
}
