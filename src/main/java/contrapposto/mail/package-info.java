/** Stage 10 as well, mail: a finished handout → one message a client, as a draft file or sent over SMTP, never twice. */
package contrapposto.mail;
