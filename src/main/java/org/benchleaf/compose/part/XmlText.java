package org.benchleaf.compose.part;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * An XML document in the making, in one namespace. What a reader may take out alone stands on a line of its own, so that
 * it can be taken out of the finished text too.
 */
public final class XmlText {

    private final XMLStreamWriter writer;

    private XmlText(XMLStreamWriter writer) {
        this.writer = writer;
    }

    /** An element to be filled. */
    public interface Filled {

        /** Writes what is inside. */
        void into(XmlText xml);
    }

    private interface Writing {
        void run(XMLStreamWriter writer) throws XMLStreamException;
    }

    /** The text of a document with that root. */
    public static String document(String root, String namespace, Filled inside) {
        StringWriter text = new StringWriter();
        try {
            XmlText xml = new XmlText(XMLOutputFactory.newFactory().createXMLStreamWriter(text));
            xml.write(writer -> {
                writer.writeStartDocument("UTF-8", "1.0");
                writer.writeCharacters("\n");
                writer.writeStartElement(root);
                writer.writeDefaultNamespace(namespace);
            });
            inside.into(xml);
            xml.line().write(writer -> {
                writer.writeEndElement();
                writer.writeCharacters("\n");
                writer.writeEndDocument();
            });
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("a text in memory takes all that is written", impossible);
        }
        return text.toString();
    }

    /** Begins a line. */
    public XmlText line() {
        return write(writer -> writer.writeCharacters("\n"));
    }

    /** An attribute of the element that was begun last. */
    public XmlText attribute(String name, String value) {
        return write(writer -> writer.writeAttribute(name, value));
    }

    /** An element with others inside. */
    public XmlText element(String name, Filled inside) {
        write(writer -> writer.writeStartElement(name));
        inside.into(this);
        return write(XMLStreamWriter::writeEndElement);
    }

    /** An element that holds text. */
    public XmlText element(String name, String content) {
        return element(name, inside -> inside.write(writer -> writer.writeCharacters(content)));
    }

    private XmlText write(Writing what) {
        try {
            what.run(writer);
            return this;
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("a text in memory takes all that is written", impossible);
        }
    }
}
