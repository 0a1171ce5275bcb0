/** XHTML to tagged PDF bytes: fonts, metadata, attachments, and findings for characters that no font can draw. */
package cyclepacket.pdf;
